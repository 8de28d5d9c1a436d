package wayside.sizing.wiring;

import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Expression;
import wayside.sizing.trace.Unit;

/** A printed ampacity under the conditions at hand: {@code A = A_t f_T f_n} [A]. */
final class CorrectedAmpacity {
    private static final Expression CORRECTED = Expression.definition("A = A_t f_T f_n");

    private CorrectedAmpacity() {}

    static Derived of(ConductorLabels labels, Derived printedA, Derived ambientFactor, Derived bundlingFactor) {
        return CORRECTED.value(
                labels.of("ampacity"),
                Unit.AMPERE,
                printedA.as("A_t"),
                ambientFactor.as("f_T"),
                bundlingFactor.as("f_n"));
    }
}
