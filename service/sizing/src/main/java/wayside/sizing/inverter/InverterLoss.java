package wayside.sizing.inverter;

import wayside.sizing.brief.InverterSpec;
import wayside.sizing.demand.Demand;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Expression;
import wayside.sizing.trace.Source;
import wayside.sizing.trace.Unit;

/**
 * What the inverter takes for itself.
 *
 * @param idlePowerW drawn while it is on [W]
 * @param hoursOn switched on [h per day]
 * @param idleWh standing by with nothing plugged in [Wh per day]
 * @param conversionWh turning direct into alternating current [Wh per day]
 * @param conversion how it turns one into the other
 */
public record InverterLoss(
        Derived idlePowerW, Derived hoursOn, Derived idleWh, Derived conversionWh, InverterConversion conversion) {
    /** A line through what owners and trade pages report: 10 W at 250 W, 18 W at 1 kW, 24 W at 2 kW, 40 W at 6.8 kW. */
    private static final double IDLE_BASE_W = 10;

    private static final double IDLE_SHARE_OF_RATING = 0.005;
    private static final Expression IDLE_POWER = Expression.commonPractice("p0 = a + b P_r");
    private static final Expression IDLE_ENERGY = Expression.definition("E = p0 h");
    private static final Expression FROM_THE_BATTERY = Expression.definition("P_dc = P_ac + p0 + L");

    /**
     * Loss of the AC loads in the demand, through an inverter of this rating.
     */
    public static InverterLoss of(Demand demand, InverterSpec spec, InverterRating rating) {
        Derived idle = idlePower(spec, rating);
        Derived hours = hoursOn(spec);
        Derived idleEnergy =
                IDLE_ENERGY.value("inverter: energy of standing by", Unit.WATT_HOUR, idle.as("p0"), hours.as("h"));
        InverterConversion conversion = InverterConversion.of(spec, rating);
        return new InverterLoss(idle, hours, idleEnergy, conversion.dailyLossWh(demand), conversion);
    }

    /** Power out of the battery while all AC loads run [W]. */
    public Derived batteryPowerW(Derived acPowerW) {
        return batteryPowerW(acPowerW, "with all AC loads running");
    }

    /** Power out of the battery while the inverter gives all that it can for long [W]. */
    public Derived fullBatteryPowerW(InverterRating rating) {
        return batteryPowerW(rating.continuousW(), "at its rating");
    }

    /** Power out of the battery for the moment of a start [W]. */
    public Derived startBatteryPowerW(Derived startW) {
        return batteryPowerW(startW, "at the hardest start");
    }

    private Derived batteryPowerW(Derived acPowerW, String when) {
        Derived loss = conversion.lossW("inverter: power of conversion " + when, acPowerW);
        return FROM_THE_BATTERY.value(
                "inverter: power out of the battery " + when,
                Unit.WATT,
                acPowerW.as("P_ac"),
                idlePowerW.as("p0"),
                loss.as("L"));
    }

    private static Derived idlePower(InverterSpec spec, InverterRating rating) {
        if (spec.idleW().isPresent()) {
            return Derived.given(
                    "inverter: power without load", spec.idleW().getAsDouble(), Unit.WATT, spec.at("idleW"));
        }
        Derived base = idleCoefficient("inverter: idle power of its electronics", IDLE_BASE_W, Unit.WATT, spec);
        Derived share =
                idleCoefficient("inverter: idle power as a share of rating", IDLE_SHARE_OF_RATING, Unit.SHARE, spec);
        return IDLE_POWER.value(
                "inverter: power without load",
                Unit.WATT,
                base.as("a"),
                share.as("b"),
                rating.continuousW().as("P_r"));
    }

    private static Derived idleCoefficient(String label, double value, Unit unit, InverterSpec spec) {
        return Derived.byDefault(
                label,
                value,
                unit,
                spec.at("idleW"),
                "As owners report; the data sheet decides",
                Source.commonPractice());
    }

    private static Derived hoursOn(InverterSpec spec) {
        if (spec.hoursPerDay().isPresent()) {
            return Derived.given(
                    "inverter: hours switched on", spec.hoursPerDay().getAsDouble(), Unit.HOUR, spec.at("hoursPerDay"));
        }
        return Derived.byDefault(
                "inverter: hours switched on",
                Unit.HOURS_PER_DAY,
                Unit.HOUR,
                spec.at("hoursPerDay"),
                "People leave it on; say how long it is on if it is switched off in between",
                Source.commonPractice());
    }
}
