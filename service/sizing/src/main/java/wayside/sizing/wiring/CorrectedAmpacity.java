package wayside.sizing.wiring;

import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Formula;
import wayside.sizing.trace.Unit;

/** A printed ampacity under the conditions at hand: {@code A = A_t f_T f_n} [A]. */
final class CorrectedAmpacity {
    private static final Formula FORMULA = Formula.definition("A = A_t f_T f_n");

    private CorrectedAmpacity() {}

    static Derived of(Gauge gauge, Derived printedA, Derived ambientFactor, Derived bundlingFactor) {
        return Derived.computed(
                gauge.title() + ": ampacity where it lies",
                printedA.value() * ambientFactor.value() * bundlingFactor.value(),
                Unit.AMPERE,
                FORMULA,
                printedA.as("A_t"),
                ambientFactor.as("f_T"),
                bundlingFactor.as("f_n"));
    }
}
