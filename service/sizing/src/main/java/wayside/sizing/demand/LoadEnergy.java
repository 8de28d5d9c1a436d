package wayside.sizing.demand;

import java.util.OptionalDouble;
import wayside.sizing.brief.Load;
import wayside.sizing.brief.RunningPower;
import wayside.sizing.brief.Surge;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Expression;
import wayside.sizing.trace.Source;
import wayside.sizing.trace.Unit;

/** Daily energy and power of a single load: {@code E = q P h d}. */
public final class LoadEnergy {
    private static final Expression FROM_CURRENT = Expression.definition("P = I V");
    private static final Expression OF_ALL = Expression.definition("P = q P1");
    private static final Expression DAILY = Expression.definition("E = P h d");
    private static final Expression START = Expression.definition("Ps = max(0, S - P1)");
    private static final Expression START_BY_FACTOR = Expression.definition("Ps = max(0, (f - 1) P1)");

    private LoadEnergy() {}

    /**
     * Energy of one load.
     *
     * @param load from the brief
     * @param ambientC air temperature [C], for a fridge whose duty depends on it
     * @param stay opens the labels of what the temperature decides
     */
    static LoadDemand of(Load load, Derived ambientC, String stay, boolean onlyAtAHookup) {
        Derived one = powerOfOne(load);
        Derived all = powerOfAll(load, one);
        return new LoadDemand(
                load,
                one,
                all,
                energy(load, all, duty(load, ambientC, stay), stay),
                extraSurge(load, one),
                onlyAtAHookup);
    }

    private static Derived powerOfOne(Load load) {
        if (load.power() instanceof RunningPower.Amps amps) {
            Derived current =
                    Derived.given(load.name() + ": current", amps.currentA(), Unit.AMPERE, load.at("currentA"));
            Derived voltage = Derived.given(
                    load.name() + ": voltage of that current", amps.voltageV(), Unit.VOLT, load.at("voltageV"));
            return FROM_CURRENT.value(
                    load.name() + ": running power of one", Unit.WATT, current.as("I"), voltage.as("V"));
        }
        double watts = ((RunningPower.Watts) load.power()).powerW();
        return Derived.given(load.name() + ": running power of one", watts, Unit.WATT, load.at("powerW"));
    }

    private static Derived powerOfAll(Load load, Derived one) {
        Derived quantity = Derived.byDefault(
                        load.name() + ": quantity", 1, Unit.COUNT, load.at("quantity"), "One", Source.commonPractice())
                .unlessGiven(load.quantity());
        return OF_ALL.value(load.name() + ": running power of all", Unit.WATT, quantity.as("q"), one.as("P1"));
    }

    private static Derived energy(Load load, Derived power, Derived duty, String stay) {
        return DAILY.value(
                (load.ambientDuty().isEmpty() ? "" : stay) + load.name() + ": daily energy",
                Unit.WATT_HOUR,
                power.as("P"),
                hours(load).as("h"),
                duty.as("d"));
    }

    private static Derived duty(Load load, Derived ambientC, String stay) {
        if (!load.ambientDuty().isEmpty()) {
            return AmbientDuty.at(load, ambientC, stay);
        }
        return Derived.byDefault(
                        load.name() + ": duty cycle",
                        1,
                        Unit.SHARE,
                        load.at("dutyCycle"),
                        "It draws its power all the time that it is on",
                        Source.commonPractice())
                .unlessGiven(load.dutyCycle());
    }

    /** On time of a day [h]: as given, or the length of the windows. */
    static Derived hours(Load load) {
        OptionalDouble given = load.hoursPerDay();
        if (given.isPresent()) {
            return Derived.given(
                    load.name() + ": hours on per day", given.getAsDouble(), Unit.HOUR, load.at("hoursPerDay"));
        }
        return Derived.given(load.name() + ": hours on per day", load.hoursOn(), Unit.HOUR, load.at("windows"));
    }

    private static Derived extraSurge(Load load, Derived one) {
        if (load.surge().isEmpty()) {
            return Derived.byDefault(
                    load.name() + ": power that a start adds",
                    0,
                    Unit.WATT,
                    load.at("surgeW"),
                    "No start surge was given; right for heaters and electronics, too little for motors and compressors",
                    Source.commonPractice());
        }
        Surge surge = load.surge().get();
        if (surge instanceof Surge.Factor factor) {
            Derived multiple = Derived.given(
                    load.name() + ": start surge as a multiple of running power",
                    factor.factor(),
                    Unit.COUNT,
                    load.at("surgeFactor"));
            return START_BY_FACTOR.value(
                    load.name() + ": power that a start adds", Unit.WATT, multiple.as("f"), one.as("P1"));
        }
        Derived watts = Derived.given(
                load.name() + ": start surge", ((Surge.Watts) surge).surgeW(), Unit.WATT, load.at("surgeW"));
        return START.value(load.name() + ": power that a start adds", Unit.WATT, watts.as("S"), one.as("P1"));
    }
}
