package wayside.sizing.system;

import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Expression;
import wayside.sizing.trace.Source;
import wayside.sizing.trace.Unit;

/**
 * Whether each string needs a fuse of its own: a fault in one is fed by all the others of its controller, {@code I = (s - 1)
 * k I_sc}, and no module may carry more than its label's largest series fuse. A tracking controller is taken to let nothing
 * back from the bank.
 *
 * <p>Source: NFPA 70, 690.9(A): no device where the currents from all sources stay within the module's rating; 690.8(A) for
 * k = 1.25.
 *
 * @param othersA what the other strings bring into a faulted one [A]
 * @param limitA the module's largest series fuse [A]
 */
public record StringFuses(Derived othersA, Derived limitA) {
    private static final Expression OTHERS = Expression.of(
                    "I = (s - 1) k I_sc",
                    Source.standard("NFPA 70 National Electrical Code, 2020", "690.9(A)(1) with 690.8(A)(1)"))
            .with("k", 1.25, Unit.COUNT);

    static StringFuses of(ArrayStrings strings, Controllers controllers, Derived limitA) {
        return new StringFuses(
                OTHERS.value(
                        "string: current from the others into a fault",
                        Unit.AMPERE,
                        controllers.stringCount().as("s"),
                        strings.module().shortCircuitA().as("I_sc")),
                limitA);
    }

    /** Whether a string must have a fuse. */
    public boolean areNeeded() {
        return othersA.value() > limitA.value();
    }
}
