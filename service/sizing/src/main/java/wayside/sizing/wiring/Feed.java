package wayside.sizing.wiring;

import java.util.Optional;
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
     * @param faultA current of a short at its main fuse [A]
     * @param estimated whether that is an estimate of ours
     */
    record Bank(Derived capacityAh, Derived faultA, boolean estimated) implements Feed {}

    /**
     * From a battery of which little is known, or from the busbar behind a bank's main cable.
     *
     * @param faultA current of a short at the fuse [A]
     * @param estimated whether that is an estimate of ours
     */
    record Node(Derived faultA, boolean estimated) implements Feed {}

    /**
     * A string of modules beside others that feed a fault in it: only a fuse made for strings will do.
     *
     * @param othersA what the other strings bring together [A]
     */
    record ParallelStrings(Derived othersA) implements Feed {}

    /** Whether the current of a short is an estimate of ours, so that a better figure may change what is asked. */
    default boolean isEstimated() {
        return (this instanceof Bank bank && bank.estimated()) || (this instanceof Node node && node.estimated());
    }
}
