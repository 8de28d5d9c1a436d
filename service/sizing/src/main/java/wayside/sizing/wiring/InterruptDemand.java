package wayside.sizing.wiring;

import java.util.Optional;
import wayside.sizing.reference.ReferenceTable;
import wayside.sizing.reference.ReferenceTables;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Unit;

/** The current that a fuse must be able to break without bursting [A]: what a short draws at its own place. */
final class InterruptDemand {
    private static final ReferenceTable TABLE_V_A = ReferenceTables.table("abyc-e11/interrupt-capacity");

    private InterruptDemand() {}

    /**
     * @param label of the result, where it is not known
     * @param feed what stands behind the fuse
     */
    static Derived of(String label, Feed feed) {
        if (feed instanceof Feed.ShortCircuit known) {
            return known.currentA();
        }
        if (feed instanceof Feed.Bank bank) {
            return bank.faultA();
        }
        if (feed instanceof Feed.Node node) {
            return node.faultA();
        }
        return feed instanceof Feed.ParallelStrings strings
                ? strings.othersA()
                : ofBranch(label, ((Feed.Branch) feed).field());
    }

    private static Derived ofBranch(String label, Optional<String> field) {
        return Derived.leftOpen(
                label,
                TABLE_V_A.rows().get(0).number("branch_A"),
                Unit.AMPERE,
                field,
                "A branch behind a main fuse, on a bank of up to 650 A cold cranking; a circuit straight from a bank"
                        + " needs far more, so name the bank if it is one",
                TABLE_V_A.source());
    }
}
