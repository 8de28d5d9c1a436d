package wayside.sizing.wiring;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Formula;
import wayside.sizing.trace.Unit;

/**
 * The conductors that a circuit may be given, in the order they are tried: one of each size from thin to thick, then
 * two, three and four side by side.
 *
 * <p>Source for the thinnest that may be paralleled, 1/0: NFPA 70, 310.10, conductors in parallel.
 */
final class Candidates {
    static final int MOST_PARALLEL = 4;
    private static final List<Derived> COUNTS = IntStream.rangeClosed(1, MOST_PARALLEL)
            .<Derived>mapToObj(count -> Derived.computed(
                    "conductors side by side each way",
                    count,
                    Unit.COUNT,
                    Formula.definition("p: as many as it takes")))
            .toList();
    private static final Gauge THINNEST_PARALLEL = Gauge.of("1/0");

    private Candidates() {}

    /** A size and how many of it lie side by side each way. */
    record Candidate(ConductorSize size, Derived parallelCount) {
        boolean isSingle() {
            return parallelCount.value() == 1;
        }
    }

    static List<Candidate> awg(RuleSet rules) {
        return of(rules.gauges().stream()
                .<ConductorSize>map(ConductorSize.Awg::new)
                .toList());
    }

    static List<Candidate> metric(RuleSet rules) {
        return of(MetricSizes.all().stream()
                .filter(size -> rules.gauges().contains(size.ratedAs()))
                .toList());
    }

    private static List<Candidate> of(List<ConductorSize> sizes) {
        List<Candidate> candidates = new ArrayList<>();
        for (Derived count : COUNTS) {
            for (ConductorSize size : sizes) {
                if (count.value() == 1 || size.ratedAs().isAtLeast(THINNEST_PARALLEL)) {
                    candidates.add(new Candidate(size, count));
                }
            }
        }
        return candidates;
    }
}
