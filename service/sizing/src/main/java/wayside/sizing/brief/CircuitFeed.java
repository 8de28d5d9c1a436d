package wayside.sizing.brief;

import java.util.OptionalDouble;

/** What stands behind a circuit's fuse, and so how much current a short circuit draws through it. */
public sealed interface CircuitFeed {
    /** A branch behind a main fuse: what a circuit is when nothing else is said. */
    record Branch() implements CircuitFeed {}

    /** @param currentA prospective short-circuit current at the fuse [A], above 0 */
    record ShortCircuit(double currentA) implements CircuitFeed {}

    /**
     * Straight from the bank, nothing but this fuse between.
     *
     * @param at where the bank was given
     * @param chemistry of the bank
     * @param capacityAh of the whole bank at its own voltage [Ah], above 0
     * @param coldCrankingA of the whole bank, printed on starting batteries [A]
     */
    record Bank(At at, Chemistry chemistry, double capacityAh, OptionalDouble coldCrankingA)
            implements CircuitFeed, Placed {}
}
