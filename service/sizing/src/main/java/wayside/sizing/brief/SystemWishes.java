package wayside.sizing.brief;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What the customer already decided or owns. A figure that is given stays as given; one that is left open is sized.
 *
 * @param busVoltageV 12, 24 or 48
 * @param chemistry of the bank; lithium iron phosphate if absent
 * @param nominalEnergyWh of a bank already owned [Wh]
 * @param solarPowerW rated power of an array already owned, or all that fits on the roof [W]
 * @param panel how the panels sit
 * @param alternatorChargerA rated output of the charger between alternator and bank, at bus voltage [A]
 * @param shoreChargerW rated output of the shore charger [W]
 * @param inverter what is known of the inverter
 * @param standbyW constant draw of monitors, outlets and electronics [W]
 * @param compartmentOffsetC how much warmer than the air the bank stands [K]; outside air if absent
 * @param alternatorRatingA on the label of the vehicle's alternator [A]
 * @param rules code of the rule set for conductors; the default set if absent
 * @param circuitLengthsM of the main circuits
 */
public record SystemWishes(
        OptionalDouble busVoltageV,
        Optional<Chemistry> chemistry,
        OptionalDouble nominalEnergyWh,
        OptionalDouble solarPowerW,
        Optional<PanelMount> panel,
        OptionalDouble alternatorChargerA,
        OptionalDouble shoreChargerW,
        InverterSpec inverter,
        OptionalDouble standbyW,
        OptionalDouble compartmentOffsetC,
        OptionalDouble alternatorRatingA,
        Optional<String> rules,
        CircuitLengths circuitLengthsM) {
    public static final SystemWishes OPEN = new SystemWishes(
            OptionalDouble.empty(),
            Optional.empty(),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            Optional.empty(),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            InverterSpec.OPEN,
            OptionalDouble.empty());

    /** Wishes that say nothing of the vehicle's alternator and cables. */
    public SystemWishes(
            OptionalDouble busVoltageV,
            Optional<Chemistry> chemistry,
            OptionalDouble nominalEnergyWh,
            OptionalDouble solarPowerW,
            Optional<PanelMount> panel,
            OptionalDouble alternatorChargerA,
            OptionalDouble shoreChargerW,
            InverterSpec inverter,
            OptionalDouble standbyW) {
        this(
                busVoltageV,
                chemistry,
                nominalEnergyWh,
                solarPowerW,
                panel,
                alternatorChargerA,
                shoreChargerW,
                inverter,
                standbyW,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                Optional.empty(),
                CircuitLengths.OPEN);
    }

    /** The bank stands warmer than the air by so much [K]. */
    public SystemWishes warmerBy(double offsetK) {
        return new SystemWishes(
                busVoltageV,
                chemistry,
                nominalEnergyWh,
                solarPowerW,
                panel,
                alternatorChargerA,
                shoreChargerW,
                inverter,
                standbyW,
                OptionalDouble.of(offsetK),
                alternatorRatingA,
                rules,
                circuitLengthsM);
    }
}
