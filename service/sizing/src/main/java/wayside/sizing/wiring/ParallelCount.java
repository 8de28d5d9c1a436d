package wayside.sizing.wiring;

import wayside.sizing.trace.Derived;
import wayside.sizing.trace.NamedOperation;
import wayside.sizing.trace.Source;
import wayside.sizing.trace.Unit;

/** How many conductors lie side by side each way, and why so many. */
final class ParallelCount {
    private static final NamedOperation FEWEST = NamedOperation.of(
            NamedOperation.Kind.NEXT_SIZE,
            "The fewest, 1 to " + Candidates.MOST_PARALLEL
                    + ", of which a size carries I_d, is protected by F and keeps"
                    + " the voltage drop at I within u; more than one only from 1/0 AWG on",
            Source.standard("NFPA 70 National Electrical Code, 2023", "310.10: conductors in parallel"));

    private ParallelCount() {}

    static Derived of(CircuitDuty duty, Derived fuseRatingA, Candidates.Candidate candidate) {
        boolean metric = candidate.size() instanceof ConductorSize.Metric;
        return FEWEST.value(
                duty.label(metric ? "metric conductors side by side each way" : "conductors side by side each way"),
                candidate.parallelCount(),
                Unit.COUNT,
                duty.designCurrentA().as("I_d"),
                fuseRatingA.as("F"),
                duty.currentA().as("I"),
                duty.roundTripM().as("L_2"),
                duty.voltageV().as("V"),
                duty.voltageDropLimitPercent().as("u"),
                duty.surroundings().insulationC().as("T_c"),
                duty.surroundings().ambientC().as("T_a"),
                duty.surroundings().bundledCount().as("n"));
    }
}
