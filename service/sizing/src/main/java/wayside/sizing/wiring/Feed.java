package wayside.sizing.wiring;

import java.util.Optional;
import wayside.sizing.brief.Chemistry;
import wayside.sizing.trace.Derived;

/** What stands behind a circuit's fuse, traced. */
public sealed interface Feed {
    /**
     * A branch behind a main fuse.
     *
     * @param field JSON Pointer of the field that says otherwise, if there is one
     */
    record Branch(Optional<String> field) implements Feed {}

    /** @param currentA prospective short-circuit current at the fuse [A] */
    record ShortCircuit(Derived currentA) implements Feed {}

    /**
     * Straight from the bank.
     *
     * @param capacityAh of the whole bank [Ah]
     * @param coldCrankingA of the whole bank, when it is known [A]
     * @param field JSON Pointer of the field that says more of its short circuit, if there is one
     */
    record Bank(Chemistry chemistry, Derived capacityAh, Optional<Derived> coldCrankingA, Optional<String> field)
            implements Feed {}
}
