package wayside.sizing.wiring;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/**
 * The conductors that a circuit may be given, in the order they are tried: one of each size from thin to thick, then
 * two, three and four side by side.
 *
 * <p>Source for the thinnest that may be paralleled, 1/0: NFPA 70, 310.10, conductors in parallel.
 */
final class Candidates {
    static final int MOST_PARALLEL = 4;
    private static final Gauge THINNEST_PARALLEL = Gauge.of("1/0");
    private static final Map<RuleSet, List<Candidate>> AWG = new ConcurrentHashMap<>();
    private static final Map<RuleSet, List<Candidate>> METRIC = new ConcurrentHashMap<>();

    private Candidates() {}

    /** A size and how many of it lie side by side each way. */
    record Candidate(ConductorSize size, int parallelCount) {
        boolean isSingle() {
            return parallelCount == 1;
        }

        /** {@code 8 AWG}, {@code 2 x 50 mm2}. */
        String title() {
            return isSingle() ? size.title() : parallelCount + " x " + size.title();
        }
    }

    static List<Candidate> awg(RuleSet rules) {
        return AWG.computeIfAbsent(
                rules,
                of -> of(of.gauges().stream()
                        .<ConductorSize>map(ConductorSize.Awg::new)
                        .toList()));
    }

    static List<Candidate> metric(RuleSet rules) {
        return METRIC.computeIfAbsent(
                rules,
                of -> of(MetricSizes.all().stream()
                        .filter(size -> of.gauges().contains(size.ratedAs()))
                        .toList()));
    }

    private static List<Candidate> of(List<ConductorSize> sizes) {
        List<Candidate> candidates = new ArrayList<>();
        for (int count = 1; count <= MOST_PARALLEL; count++) {
            for (ConductorSize size : sizes) {
                if (count == 1 || size.ratedAs().isAtLeast(THINNEST_PARALLEL)) {
                    candidates.add(new Candidate(size, count));
                }
            }
        }
        return List.copyOf(candidates);
    }
}
