package wayside.sizing.wiring;

import java.util.Comparator;
import java.util.Optional;
import wayside.sizing.trace.Derived;

/**
 * Sizes one circuit: the smallest standard fuse that carries the design current, then the thinnest conductor whose
 * corrected ampacity covers that fuse and whose voltage drop is within the limit, then a kind of fuse that stands the
 * circuit's rating, voltage and short-circuit current.
 */
public final class CircuitSizing {
    private CircuitSizing() {}

    /**
     * @param task what the circuit must do, with defaults open
     * @return a conductor and a fuse, or the shortfall
     * @throws IllegalArgumentException for insulation below 60 C
     */
    public static SizedCircuit of(CircuitTask task) {
        CircuitDuty duty = DutyReading.of(task);
        return duty.rules()
                .fuseRatings()
                .findSmallest(duty.label("standard fuse rating"), duty.designCurrentA())
                .map(rating -> withFuse(duty, rating))
                .orElseGet(() -> notFeasible(duty, Shortfalls.noRating(duty)));
    }

    /** What the sturdiest fuse of the tables breaks [A]. */
    public static Derived mostBrokenA() {
        return FuseLink.all().stream()
                .map(FuseLink::breakingA)
                .max(Comparator.comparingDouble(Derived::value))
                .orElseThrow();
    }

    private static SizedCircuit withFuse(CircuitDuty duty, Derived ratingA) {
        Optional<SizedFuse> chosen = FuseChoice.find(duty, ratingA);
        ConductorSearch search = new ConductorSearch(
                duty, ratingA, chosen.flatMap(SizedFuse::letThroughA2s), Candidates.awg(duty.rules()));
        Optional<ConductorSearch.Found> found = search.findThinnest();
        if (found.isEmpty()) {
            return notFeasible(duty, Shortfalls.noConductor(duty, ratingA, search));
        }
        return chosen.map(fuse -> wired(duty, found.get(), fuse))
                .orElseGet(() -> notFeasible(duty, Shortfalls.noType(duty)));
    }

    private static SizedCircuit wired(CircuitDuty duty, ConductorSearch.Found found, SizedFuse fuse) {
        Optional<SizedConductor> metric = new ConductorSearch(
                        duty, fuse.ratingA(), fuse.letThroughA2s(), Candidates.metric(duty.rules()))
                .findThinnest()
                .map(ConductorSearch.Found::conductor);
        return new SizedCircuit.Wired(
                duty,
                found.conductor(),
                metric,
                fuse,
                found.governedBy(),
                CircuitCautions.wired(duty, found.conductor(), fuse));
    }

    private static SizedCircuit notFeasible(CircuitDuty duty, CircuitShortfall shortfall) {
        return new SizedCircuit.NotFeasible(duty, shortfall, CircuitCautions.always());
    }
}
