package wayside.sizing.wiring;

import java.util.ArrayList;
import java.util.List;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Formula;
import wayside.sizing.trace.Input;
import wayside.sizing.trace.Unit;

/**
 * Voltage lost on the way out and back.
 *
 * <p>{@code U = L_2 I R / 1000 p}; U [V], L_2 the round trip [m], I [A], R of one conductor [Ohm/km], p conductors in
 * parallel each way.
 *
 * @param dropV [V], 0 or more
 * @param dropPercent of the nominal voltage [%]
 */
record VoltageDrop(Derived dropV, Derived dropPercent) {
    private static final Formula SINGLE = Formula.definition("U = L_2 I R / 1000");
    private static final Formula PARALLEL = Formula.definition("U = L_2 I R / (1000 p)");
    private static final Formula PERCENT = Formula.definition("u = 100 U / V");

    static VoltageDrop of(CircuitDuty duty, Derived ohmPerKm, Derived parallelCount) {
        Derived drop = drop(duty, ohmPerKm, parallelCount);
        Derived percent = Derived.computed(
                duty.label("voltage drop"),
                100 * drop.value() / duty.voltageV().value(),
                Unit.PERCENT,
                PERCENT,
                drop.as("U"),
                duty.voltageV().as("V"));
        return new VoltageDrop(drop, percent);
    }

    private static Derived drop(CircuitDuty duty, Derived ohmPerKm, Derived parallelCount) {
        List<Input> inputs = new ArrayList<>(
                List.of(duty.roundTripM().as("L_2"), duty.currentA().as("I"), ohmPerKm.as("R")));
        boolean single = parallelCount.value() == 1;
        if (!single) {
            inputs.add(parallelCount.as("p"));
        }
        return Derived.computed(
                duty.label("voltage drop, both ways"),
                volts(duty.roundTripM().value(), duty.currentA().value(), ohmPerKm.value(), parallelCount.value()),
                Unit.VOLT,
                single ? SINGLE : PARALLEL,
                inputs.toArray(Input[]::new));
    }

    /** The formula itself [V]. */
    static double volts(double roundTripM, double currentA, double ohmPerKm, double parallelCount) {
        return roundTripM * currentA * ohmPerKm / (1000 * parallelCount);
    }
}
