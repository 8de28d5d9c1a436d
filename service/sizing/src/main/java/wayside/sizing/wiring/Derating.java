package wayside.sizing.wiring;

import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Expression;
import wayside.sizing.trace.Unit;

/**
 * What a place makes of printed ampacities, whatever the gauge: {@code A = A_t f_T f_n} [A].
 *
 * @param insulationClassC the class whose printed figures hold [C]
 * @param ambientFactor of its air [1]
 * @param bundlingFactor of the conductors that run together [1]
 */
record Derating(Derived insulationClassC, Derived ambientFactor, Derived bundlingFactor) {
    private static final Expression CORRECTED = Expression.definition("A = A_t f_T f_n");

    Derived of(ConductorLabels labels, Derived printedA) {
        return CORRECTED.value(
                labels.of("ampacity"),
                Unit.AMPERE,
                printedA.as("A_t"),
                ambientFactor.as("f_T"),
                bundlingFactor.as("f_n"));
    }
}
