package wayside.sizing.demand;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import wayside.sizing.brief.Load;
import wayside.sizing.brief.RunningPower;
import wayside.sizing.brief.Surge;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Formula;
import wayside.sizing.trace.Input;
import wayside.sizing.trace.Source;
import wayside.sizing.trace.Unit;

/** Daily energy and power of a single load: {@code E = q P h d}. */
public final class LoadEnergy {
    private LoadEnergy() {}

    /**
     * Energy of one load.
     *
     * @param load from the brief
     * @param index its place in the list, for the paths of what was given
     * @param ambientC air temperature [C], for a fridge whose duty depends on it
     */
    public static LoadDemand of(Load load, int index, Derived ambientC) {
        String path = "/loads/" + index;
        Derived one = powerOfOne(load, path);
        Derived all = powerOfAll(load, path, one);
        return new LoadDemand(load, all, energy(load, path, all, ambientC), extraSurge(load, path, one));
    }

    private static Derived powerOfOne(Load load, String path) {
        if (load.power() instanceof RunningPower.Amps amps) {
            Derived current =
                    Derived.given(load.name() + ": current", amps.currentA(), Unit.AMPERE, path + "/currentA");
            Derived voltage = Derived.given(
                    load.name() + ": voltage of that current", amps.voltageV(), Unit.VOLT, path + "/voltageV");
            return Derived.computed(
                    load.name() + ": running power of one",
                    amps.currentA() * amps.voltageV(),
                    Unit.WATT,
                    Formula.definition("P = I V"),
                    current.as("I"),
                    voltage.as("V"));
        }
        double watts = ((RunningPower.Watts) load.power()).powerW();
        return Derived.given(load.name() + ": running power of one", watts, Unit.WATT, path + "/powerW");
    }

    private static Derived powerOfAll(Load load, String path, Derived one) {
        if (load.quantity() == 1) {
            return one;
        }
        Derived quantity = Derived.given(load.name() + ": quantity", load.quantity(), Unit.COUNT, path + "/quantity");
        return Derived.computed(
                load.name() + ": running power of all",
                load.quantity() * one.value(),
                Unit.WATT,
                Formula.definition("P = q P1"),
                quantity.as("q"),
                one.as("P1"));
    }

    private static Derived energy(Load load, String path, Derived power, Derived ambientC) {
        Derived hours = hours(load, path);
        List<Input> inputs = new ArrayList<>(List.of(power.as("P"), hours.as("h")));
        double energy = power.value() * hours.value();
        String text = "E = P h";
        if (!load.ambientDuty().isEmpty() || load.dutyCycle().isPresent()) {
            Derived duty = load.ambientDuty().isEmpty()
                    ? Derived.given(
                            load.name() + ": duty cycle",
                            load.dutyCycle().orElseThrow(),
                            Unit.SHARE,
                            path + "/dutyCycle")
                    : AmbientDuty.at(load, path, ambientC);
            inputs.add(duty.as("d"));
            energy *= duty.value();
            text = "E = P h d";
        }
        return Derived.computed(
                load.name() + ": daily energy",
                energy,
                Unit.WATT_HOUR,
                Formula.definition(text),
                inputs.toArray(Input[]::new));
    }

    /** On time of a day [h]: as given, or the length of the windows. */
    static Derived hours(Load load, String path) {
        OptionalDouble given = load.hoursPerDay();
        if (given.isPresent()) {
            return Derived.given(
                    load.name() + ": hours on per day", given.getAsDouble(), Unit.HOUR, path + "/hoursPerDay");
        }
        return Derived.given(load.name() + ": hours on per day", load.hoursOn(), Unit.HOUR, path + "/windows");
    }

    private static Derived extraSurge(Load load, String path, Derived one) {
        if (load.surge().isEmpty()) {
            return Derived.assumed(
                    load.name() + ": power that a start adds",
                    0,
                    Unit.WATT,
                    path + "/surgeW",
                    "No start surge was given; right for heaters and electronics, too little for motors and compressors",
                    Source.commonPractice());
        }
        Surge surge = load.surge().get();
        if (surge instanceof Surge.Factor factor) {
            Derived multiple = Derived.given(
                    load.name() + ": start surge as a multiple of running power",
                    factor.factor(),
                    Unit.COUNT,
                    path + "/surgeFactor");
            return Derived.computed(
                    load.name() + ": power that a start adds",
                    Math.max(0, (factor.factor() - 1) * one.value()),
                    Unit.WATT,
                    Formula.definition("Ps = (f - 1) P1"),
                    multiple.as("f"),
                    one.as("P1"));
        }
        Derived watts = Derived.given(
                load.name() + ": start surge", ((Surge.Watts) surge).surgeW(), Unit.WATT, path + "/surgeW");
        return Derived.computed(
                load.name() + ": power that a start adds",
                Math.max(0, watts.value() - one.value()),
                Unit.WATT,
                Formula.definition("Ps = S - P1"),
                watts.as("S"),
                one.as("P1"));
    }
}
