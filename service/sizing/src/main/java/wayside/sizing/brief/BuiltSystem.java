package wayside.sizing.brief;

import java.util.OptionalDouble;

/**
 * A system as it stands, or as it is proposed.
 *
 * @param at where it was given
 * @param busVoltageV 12, 24 or 48
 * @param nominalEnergyWh rated energy of the bank [Wh]
 * @param solarPowerW rated power of the array [W]; none if absent
 * @param alternatorChargerA rated output of the alternator charger at bus voltage [A]; none if absent
 * @param shoreChargerW rated output of the shore charger [W]; none if absent
 * @param inverter what is known of the inverter
 * @param standbyW constant draw of monitors, outlets and electronics [W]; a default if absent
 * @param dcLoadsVoltageV that the DC loads are made for [V]; 12 if absent
 * @param bankRates what the maker of the bank says that it bears
 * @param mains the hookup
 */
public record BuiltSystem(
        At at,
        double busVoltageV,
        Chemistry chemistry,
        double nominalEnergyWh,
        OptionalDouble solarPowerW,
        PanelMount panel,
        OptionalDouble alternatorChargerA,
        OptionalDouble shoreChargerW,
        InverterSpec inverter,
        OptionalDouble standbyW,
        OptionalDouble dcLoadsVoltageV,
        BankRates bankRates,
        Mains mains)
        implements Placed {
    /** A system whose DC loads are made for 12 V. */
    public BuiltSystem(
            At at,
            double busVoltageV,
            Chemistry chemistry,
            double nominalEnergyWh,
            OptionalDouble solarPowerW,
            PanelMount panel,
            OptionalDouble alternatorChargerA,
            OptionalDouble shoreChargerW,
            InverterSpec inverter,
            OptionalDouble standbyW) {
        this(
                at,
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
                BankRates.open(at),
                Mains.open(at.field("mains")));
    }

    /** Rated power of the array [W], 0 for none. */
    public double arrayW() {
        return solarPowerW.orElse(0);
    }

    /** Rated output of the alternator charger at bus voltage [A], 0 for none. */
    public double alternatorA() {
        return alternatorChargerA.orElse(0);
    }

    /** Rated output of the shore charger [W], 0 for none. */
    public double shoreW() {
        return shoreChargerW.orElse(0);
    }
}
