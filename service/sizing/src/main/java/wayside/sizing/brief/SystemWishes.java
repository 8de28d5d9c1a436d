package wayside.sizing.brief;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What the customer already decided or owns. A figure that is given stays as given; one that is left open is sized.
 *
 * @param at where it was given
 * @param busVoltageV 12, 24 or 48
 * @param chemistry of the bank; lithium iron phosphate if absent
 * @param nominalEnergyWh of a bank already owned [Wh]
 * @param solarPowerW rated power of an array already owned, or all that fits on the roof [W]
 * @param panel how the panels sit
 * @param alternatorChargerA rated output of the charger between alternator and bank, at bus voltage [A]
 * @param shoreChargerW rated output of the shore charger [W]
 * @param inverter what is known of the inverter
 * @param standbyW constant draw of monitors, outlets and electronics [W]
 * @param bankPlacement where the bank stands
 * @param vehicle its net and its alternator
 * @param rules code of the rule set for conductors; the default set if absent
 * @param circuitLengthsM of the main circuits
 * @param roof for the panels
 * @param locker for the bank
 * @param sizes that parts are to be had in; the usual ones where they are left open
 * @param dcLoadsVoltageV that the DC loads are made for [V]; 12 if absent
 * @param bankRates what the maker of the bank says that it bears
 * @param mains the hookup
 */
public record SystemWishes(
        At at,
        OptionalDouble busVoltageV,
        Optional<Chemistry> chemistry,
        OptionalDouble nominalEnergyWh,
        OptionalDouble solarPowerW,
        PanelMount panel,
        OptionalDouble alternatorChargerA,
        OptionalDouble shoreChargerW,
        InverterSpec inverter,
        OptionalDouble standbyW,
        BankPlacement bankPlacement,
        Vehicle vehicle,
        Optional<String> rules,
        CircuitLengths circuitLengthsM,
        Roof roof,
        Locker locker,
        SizesThatExist sizes,
        OptionalDouble dcLoadsVoltageV,
        BankRates bankRates,
        Mains mains)
        implements Placed {
    /** Wishes that leave room and sizes open. */
    public SystemWishes(
            At at,
            OptionalDouble busVoltageV,
            Optional<Chemistry> chemistry,
            OptionalDouble nominalEnergyWh,
            OptionalDouble solarPowerW,
            PanelMount panel,
            OptionalDouble alternatorChargerA,
            OptionalDouble shoreChargerW,
            InverterSpec inverter,
            OptionalDouble standbyW,
            BankPlacement bankPlacement,
            Vehicle vehicle,
            Optional<String> rules,
            CircuitLengths circuitLengthsM) {
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
                bankPlacement,
                vehicle,
                rules,
                circuitLengthsM,
                Roof.open(at.field("roof")),
                Locker.open(at.field("locker")),
                SizesThatExist.OPEN,
                OptionalDouble.empty(),
                BankRates.open(at),
                Mains.open(at.field("mains")));
    }

    /** Nothing is said; it would stand there. */
    public static SystemWishes open(At at) {
        OptionalDouble open = OptionalDouble.empty();
        return new SystemWishes(
                at,
                open,
                Optional.empty(),
                open,
                open,
                PanelMount.open(at.field("panel")),
                open,
                open,
                InverterSpec.open(at.field("inverter")),
                open,
                BankPlacement.OPEN,
                Vehicle.open(at.field("vehicle")),
                Optional.empty(),
                CircuitLengths.open(at.field("circuitLengthsM")));
    }

    /** The same with another place of the bank. */
    public SystemWishes in(BankPlacement placement) {
        return new SystemWishes(
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
                placement,
                vehicle,
                rules,
                circuitLengthsM,
                roof,
                locker,
                sizes,
                dcLoadsVoltageV,
                bankRates,
                mains);
    }

    /** The same with room for panels and bank. */
    public SystemWishes within(Roof newRoof, Locker newLocker, Vehicle newVehicle) {
        return with(newVehicle, newRoof, newLocker, sizes);
    }

    /** The same with other sizes to be had. */
    public SystemWishes of(SizesThatExist newSizes) {
        return with(vehicle, roof, locker, newSizes);
    }

    /** The same with DC loads that are made for another voltage than 12 V. */
    public SystemWishes feedingDcAt(double volts) {
        return new SystemWishes(
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
                bankPlacement,
                vehicle,
                rules,
                circuitLengthsM,
                roof,
                locker,
                sizes,
                OptionalDouble.of(volts),
                bankRates,
                mains);
    }

    private SystemWishes with(Vehicle newVehicle, Roof newRoof, Locker newLocker, SizesThatExist newSizes) {
        return new SystemWishes(
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
                bankPlacement,
                newVehicle,
                rules,
                circuitLengthsM,
                newRoof,
                newLocker,
                newSizes,
                dcLoadsVoltageV,
                bankRates,
                mains);
    }

    /** The same of a bank whose maker says what it bears, and at a hookup. */
    public SystemWishes bearing(BankRates newRates, Mains newMains) {
        return new SystemWishes(
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
                bankPlacement,
                vehicle,
                rules,
                circuitLengthsM,
                roof,
                locker,
                sizes,
                dcLoadsVoltageV,
                newRates,
                newMains);
    }
}
