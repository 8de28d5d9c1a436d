package wayside.sizing.wiring;

import java.util.ArrayList;
import java.util.List;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Expression;
import wayside.sizing.trace.Input;
import wayside.sizing.trace.Unit;

/**
 * Voltage lost on the way out and back.
 *
 * <p>{@code U = L_2 I R / (1000 p)}; U [V], L_2 the round trip [m], I [A], R of one conductor [Ohm/km], p conductors in
 * parallel each way.
 *
 * @param dropV [V], 0 or more
 * @param dropPercent of the nominal voltage [%]
 */
record VoltageDrop(Derived dropV, Derived dropPercent) {
    private static final Expression SINGLE = Expression.definition("U = L_2 I R / 1000");
    private static final Expression PARALLEL = Expression.definition("U = L_2 I R / (1000 p)");
    private static final Expression PERCENT = Expression.definition("u = 100 U / V");

    static VoltageDrop of(CircuitDuty duty, ConductorLabels labels, Derived ohmPerKm, Derived parallelCount) {
        List<Input> inputs = new ArrayList<>(
                List.of(duty.roundTripM().as("L_2"), duty.currentA().as("I"), ohmPerKm.as("R")));
        boolean single = parallelCount.value() == 1;
        if (!single) {
            inputs.add(parallelCount.as("p"));
        }
        Derived drop = (single ? SINGLE : PARALLEL).value(labels.of("voltage drop") + ", both ways", Unit.VOLT, inputs);
        Derived percent = PERCENT.value(
                labels.of("voltage drop"),
                Unit.PERCENT,
                drop.as("U"),
                duty.voltageV().as("V"));
        return new VoltageDrop(drop, percent);
    }
}
