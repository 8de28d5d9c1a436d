package wayside.sizing.wiring;

import java.util.Map;
import java.util.Optional;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Expression;
import wayside.sizing.trace.Unit;

/**
 * What a place makes of printed ampacities, whatever the gauge: {@code A = A_t f_T f_n} [A].
 *
 * @param printedA of the insulation's class, by gauge [A]
 * @param ambientFactor of its air [1]
 * @param bundlingFactor of the conductors that run together [1]
 */
record Derating(Map<String, Derived> printedA, Derived ambientFactor, Derived bundlingFactor) {
    private static final Expression CORRECTED = Expression.definition("A = A_t f_T f_n");

    /** What a conductor may carry there [A]; empty where the table prints nothing of its gauge. */
    Optional<Derived> ampacityA(ConductorLabels labels, Gauge gauge) {
        return Optional.ofNullable(printedA.get(gauge.awg()))
                .map(printed -> CORRECTED.value(
                        labels.of("ampacity"),
                        Unit.AMPERE,
                        printed.as("A_t"),
                        ambientFactor.as("f_T"),
                        bundlingFactor.as("f_n")));
    }
}
