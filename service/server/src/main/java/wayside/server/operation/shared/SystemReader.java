package wayside.server.operation.shared;

import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import wayside.sizing.brief.At;
import wayside.sizing.brief.BankPlacement;
import wayside.sizing.brief.BankRates;
import wayside.sizing.brief.Box;
import wayside.sizing.brief.BuiltSystem;
import wayside.sizing.brief.Chemistry;
import wayside.sizing.brief.CircuitLengths;
import wayside.sizing.brief.InverterSpec;
import wayside.sizing.brief.Locker;
import wayside.sizing.brief.Mains;
import wayside.sizing.brief.Objective;
import wayside.sizing.brief.PanelMount;
import wayside.sizing.brief.Roof;
import wayside.sizing.brief.SystemWishes;
import wayside.sizing.brief.Target;
import wayside.sizing.brief.Vehicle;

/** Systems, wished for or built, as the brief wants them. */
public final class SystemReader {
    private SystemReader() {}

    public static SystemWishes wishes(At at, @Nullable SystemWishesInput wishes, BankPlacement placement) {
        return (wishes == null ? SystemWishes.open(at) : wishes(at, wishes)).in(placement);
    }

    private static SystemWishes wishes(At at, SystemWishesInput wishes) {
        return new SystemWishes(
                at,
                Given.number(wishes.busVoltageV()),
                Given.map(wishes.chemistry(), SystemReader::chemistry),
                Given.number(wishes.nominalEnergyWh()),
                Given.number(wishes.solarPowerW()),
                panel(at.field("panel"), wishes.panel()),
                Given.number(wishes.alternatorChargerA()),
                Given.number(wishes.shoreChargerW()),
                inverter(at.field("inverter"), wishes.inverter()),
                Given.number(wishes.standbyW()),
                BankPlacement.OPEN,
                vehicle(at.field("vehicle"), wishes.vehicle()),
                Given.map(wishes.rules(), RuleSetCode::code),
                lengths(at.field("circuitLengthsM"), wishes.circuitLengthsM()),
                roof(at.field("roof"), wishes.roof()),
                locker(at.field("locker"), wishes.locker()),
                SizesReader.read(at.field("sizes"), wishes.sizes()),
                Given.number(wishes.dcLoadsVoltageV()),
                new BankRates(
                        at,
                        Given.number(wishes.maximumDischargeA()),
                        Given.number(wishes.peakDischargeA()),
                        Given.number(wishes.maximumChargeA()),
                        Given.number(wishes.shortCircuitA()),
                        Given.number(wishes.healthShare())),
                mains(at.field("mains"), wishes.mains()));
    }

    private static Roof roof(At at, @Nullable RoofInput roof) {
        return roof == null
                ? Roof.open(at)
                : new Roof(
                        at,
                        Given.number(roof.areaM2()),
                        Given.list(
                                at.field("rectangles"),
                                roof.rectangles(),
                                (here, free) -> new Roof.Rectangle(here, free.lengthM(), free.widthM())));
    }

    private static Locker locker(At at, @Nullable LockerInput locker) {
        if (locker == null) {
            return Locker.open(at);
        }
        return locker.lengthMm() == null || locker.widthMm() == null || locker.heightMm() == null
                ? new Locker(at, Optional.empty(), Given.number(locker.volumeL()))
                : new Locker(
                        at,
                        Optional.of(new Box(locker.lengthMm(), locker.widthMm(), locker.heightMm())),
                        OptionalDouble.empty());
    }

    private static Mains mains(At at, @Nullable MainsInput mains) {
        return mains == null
                ? Mains.open(at)
                : new Mains(
                        at,
                        Given.number(mains.voltageV()),
                        Given.number(mains.hookupLimitA()),
                        Optional.ofNullable(mains.passThrough()));
    }

    private static Vehicle vehicle(At at, @Nullable VehicleInput vehicle) {
        return vehicle == null
                ? Vehicle.open(at)
                : new Vehicle(
                        at,
                        Given.number(vehicle.voltageV()),
                        Given.number(vehicle.alternatorRatingA()),
                        Given.number(vehicle.payloadKg()));
    }

    private static CircuitLengths lengths(At at, @Nullable CircuitLengthsInput lengths) {
        if (lengths == null) {
            return CircuitLengths.open(at);
        }
        return new CircuitLengths(
                at,
                Given.number(lengths.main()),
                Given.number(lengths.inverter()),
                Given.number(lengths.controllerToBattery()),
                Given.number(lengths.arrayToController()),
                Given.number(lengths.alternatorCharger()),
                Given.number(lengths.alternatorChargerToBusbar()),
                Given.number(lengths.shoreCharger()),
                Given.number(lengths.distribution()));
    }

    public static BuiltSystem built(At at, BuiltSystemInput system) {
        return new BuiltSystem(
                at,
                system.busVoltageV(),
                chemistry(system.chemistry()),
                system.nominalEnergyWh(),
                Given.number(system.solarPowerW()),
                panel(at.field("panel"), system.panel()),
                Given.number(system.alternatorChargerA()),
                Given.number(system.shoreChargerW()),
                inverter(at.field("inverter"), system.inverter()),
                Given.number(system.standbyW()),
                Given.number(system.dcLoadsVoltageV()),
                new BankRates(
                        at,
                        Given.number(system.maximumDischargeA()),
                        Given.number(system.peakDischargeA()),
                        Given.number(system.maximumChargeA()),
                        Given.number(system.shortCircuitA()),
                        Given.number(system.healthShare())),
                mains(at.field("mains"), system.mains()));
    }

    public static InverterSpec inverter(At at, @Nullable InverterInput inverter) {
        if (inverter == null) {
            return InverterSpec.open(at);
        }
        return new InverterSpec(
                at,
                Given.number(inverter.continuousW()),
                Given.number(inverter.surgeW()),
                Given.number(inverter.idleW()),
                Given.number(inverter.efficiency()),
                Given.number(inverter.hoursPerDay()));
    }

    public static PanelMount panel(At at, @Nullable PanelInput panel) {
        if (panel == null) {
            return PanelMount.open(at);
        }
        return new PanelMount(
                at,
                Given.number(panel.tiltDegrees()),
                Given.number(panel.azimuthDegrees()),
                Given.number(panel.shadedShare()),
                Given.number(panel.snowCoveredShare()));
    }

    public static Target target(At at, @Nullable TargetInput target) {
        if (target == null) {
            return Target.open(at);
        }
        return new Target(
                at,
                Given.number(target.autonomyDays()),
                Given.number(target.chanceOfRunningFlat()),
                Given.map(target.objective(), code -> Objective.valueOf(code.name())),
                Given.number(target.comfortServedShare()),
                Optional.ofNullable(target.mustBalance()),
                Given.number(target.mayDriveHours()),
                Given.number(target.bankPricePerWh()),
                Given.number(target.arrayPricePerW()));
    }

    public static Chemistry chemistry(ChemistryCode code) {
        return Chemistry.valueOf(code.name());
    }
}
