package wayside.server.mapping;

import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import wayside.server.api.BuiltSystemInput;
import wayside.server.api.ChemistryCode;
import wayside.server.api.CircuitLengthsInput;
import wayside.server.api.InverterInput;
import wayside.server.api.PanelInput;
import wayside.server.api.RuleSetCode;
import wayside.server.api.SystemWishesInput;
import wayside.server.api.TargetInput;
import wayside.sizing.brief.BuiltSystem;
import wayside.sizing.brief.Chemistry;
import wayside.sizing.brief.CircuitLengths;
import wayside.sizing.brief.InverterSpec;
import wayside.sizing.brief.Objective;
import wayside.sizing.brief.PanelMount;
import wayside.sizing.brief.SystemWishes;
import wayside.sizing.brief.Target;

/** Systems, wished for or built, as the brief wants them. */
public final class SystemReader {
    private SystemReader() {}

    public static SystemWishes wishes(@Nullable SystemWishesInput wishes, @Nullable Double compartmentOffsetC) {
        SystemWishes asked = wishes == null ? SystemWishes.OPEN : wishes(wishes);
        return compartmentOffsetC == null ? asked : asked.warmerBy(compartmentOffsetC);
    }

    private static SystemWishes wishes(SystemWishesInput wishes) {
        return new SystemWishes(
                Given.number(wishes.busVoltageV()),
                Given.map(wishes.chemistry(), SystemReader::chemistry),
                Given.number(wishes.nominalEnergyWh()),
                Given.number(wishes.solarPowerW()),
                Given.map(wishes.panel(), SystemReader::panel),
                Given.number(wishes.alternatorChargerA()),
                Given.number(wishes.shoreChargerW()),
                inverter(wishes.inverter()),
                Given.number(wishes.standbyW()),
                OptionalDouble.empty(),
                Given.number(wishes.alternatorRatingA()),
                Given.map(wishes.rules(), RuleSetCode::code),
                lengths(wishes.circuitLengthsM()));
    }

    private static CircuitLengths lengths(@Nullable CircuitLengthsInput lengths) {
        if (lengths == null) {
            return CircuitLengths.OPEN;
        }
        return new CircuitLengths(
                Given.number(lengths.main()),
                Given.number(lengths.inverter()),
                Given.number(lengths.controllerToBattery()),
                Given.number(lengths.arrayToController()),
                Given.number(lengths.alternatorCharger()),
                Given.number(lengths.shoreCharger()),
                Given.number(lengths.distribution()));
    }

    public static BuiltSystem built(BuiltSystemInput system) {
        return new BuiltSystem(
                system.busVoltageV(),
                chemistry(system.chemistry()),
                system.nominalEnergyWh(),
                Given.numberOr(system.solarPowerW(), 0),
                panel(system.panel()),
                Given.numberOr(system.alternatorChargerA(), 0),
                Given.numberOr(system.shoreChargerW(), 0),
                inverter(system.inverter()),
                Given.number(system.standbyW()));
    }

    public static InverterSpec inverter(@Nullable InverterInput inverter) {
        if (inverter == null) {
            return InverterSpec.OPEN;
        }
        return new InverterSpec(
                Given.number(inverter.continuousW()),
                Given.number(inverter.surgeW()),
                Given.number(inverter.idleW()),
                Given.number(inverter.efficiency()),
                Given.number(inverter.hoursPerDay()));
    }

    public static PanelMount panel(@Nullable PanelInput panel) {
        if (panel == null) {
            return PanelMount.OPEN;
        }
        return new PanelMount(
                Given.number(panel.tiltDegrees()),
                Given.number(panel.azimuthDegrees()),
                Given.number(panel.shadedShare()));
    }

    public static Target target(@Nullable TargetInput target) {
        if (target == null) {
            return Target.OPEN;
        }
        return new Target(
                Given.number(target.autonomyDays()),
                Given.number(target.chanceOfRunningFlat()),
                Given.map(target.objective(), code -> Objective.valueOf(code.name())),
                Given.number(target.bankPricePerWh()),
                Given.number(target.arrayPricePerW()));
    }

    public static Chemistry chemistry(ChemistryCode code) {
        return Chemistry.valueOf(code.name());
    }
}
