package wayside.sizing.wiring;

import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Expression;
import wayside.sizing.trace.Unit;

/**
 * How the conductors of a circuit lie.
 *
 * @param parallelCount conductors side by side each way [1]
 * @param derating of one of them
 */
record Laying(Derived parallelCount, Derating derating) {
    /** Conductors in parallel count as lying together. */
    private static final Expression BUNDLE = Expression.commonPractice("n_b = n + 2 (p - 1)");

    static Laying of(CircuitDuty duty, Derived fuseRatingA, Candidates.Candidate candidate) {
        Derived count = ParallelCount.of(duty, fuseRatingA, candidate);
        ConductorLabels labels = new ConductorLabels(duty.name(), candidate.title());
        return new Laying(count, duty.rules().derating(labels, surroundings(duty, labels, candidate, count)));
    }

    private static Surroundings surroundings(
            CircuitDuty duty, ConductorLabels labels, Candidates.Candidate candidate, Derived count) {
        if (candidate.isSingle()) {
            return duty.surroundings();
        }
        return duty.surroundings()
                .bundled(BUNDLE.value(
                        labels.ofCircuit("conductors that run together, laying " + candidate.title()),
                        Unit.COUNT,
                        duty.surroundings().bundledCount().as("n"),
                        count.as("p")));
    }
}
