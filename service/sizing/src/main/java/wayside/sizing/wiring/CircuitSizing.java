package wayside.sizing.wiring;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Message;

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

    private static SizedCircuit withFuse(CircuitDuty duty, Derived ratingA) {
        ConductorSearch search = new ConductorSearch(duty, ratingA, Candidates.awg(duty.rules()));
        Optional<ConductorSearch.Found> found = search.findThinnest();
        if (found.isEmpty()) {
            return notFeasible(duty, Shortfalls.noConductor(duty, ratingA, search));
        }
        return findFuse(duty, ratingA)
                .map(fuse -> wired(duty, found.get(), fuse))
                .orElseGet(() -> notFeasible(duty, Shortfalls.noType(duty)));
    }

    private static SizedCircuit wired(CircuitDuty duty, ConductorSearch.Found found, SizedFuse fuse) {
        Optional<SizedConductor> metric = new ConductorSearch(duty, fuse.ratingA(), Candidates.metric(duty.rules()))
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

    private static Optional<SizedFuse> findFuse(CircuitDuty duty, Derived ratingA) {
        List<SizedFuse.Refusal> refused = new ArrayList<>();
        for (FuseLink link : FuseLink.all()) {
            Optional<Message> refusal = link.findRefusal(
                    ratingA.value(),
                    duty.highestVoltageV().value(),
                    duty.interruptA().value());
            if (refusal.isEmpty()) {
                return Optional.of(new SizedFuse(ratingA, link, refused));
            }
            refused.add(new SizedFuse.Refusal(link, refusal.get()));
        }
        return Optional.empty();
    }
}
