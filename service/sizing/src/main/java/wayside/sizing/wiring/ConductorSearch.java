package wayside.sizing.wiring;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import wayside.sizing.trace.Derived;

/** Tries candidates from thin to thick until one meets every demand, and says which demand the one before didn't meet. */
final class ConductorSearch {
    private final CircuitDuty duty;
    private final Derived fuseRatingA;
    private final Optional<Derived> letThroughA2s;
    private final List<Candidates.Candidate> candidates;

    /** Of every candidate that is not laid in parallel. */
    private final Laying single;

    /**
     * @param letThroughA2s heat of a short that the fuse lets through, where it is known [A2s]
     * @param candidates in the order they are tried, not empty, a single conductor first
     */
    ConductorSearch(
            CircuitDuty duty,
            Derived fuseRatingA,
            Optional<Derived> letThroughA2s,
            List<Candidates.Candidate> candidates) {
        this.duty = duty;
        this.fuseRatingA = fuseRatingA;
        this.letThroughA2s = letThroughA2s;
        this.candidates = candidates;
        this.single = Laying.of(duty, fuseRatingA, candidates.get(0));
    }

    /** A conductor and what decided it. */
    record Found(SizedConductor conductor, GovernedBy governedBy) {}

    /** The first that meets every demand; empty when none does. */
    Optional<Found> findThinnest() {
        GovernedBy unmet = GovernedBy.MINIMUM_SIZE;
        for (Candidates.Candidate candidate : candidates) {
            ConductorTrial trial = trial(candidate);
            if (!trial.carriesTheCurrent()) {
                unmet = GovernedBy.AMPACITY;
            } else if (!trial.isProtected(fuseRatingA)) {
                unmet = GovernedBy.FUSE;
            } else {
                ConductorTrial.Loss loss = trial.loss();
                Optional<GovernedBy> failed = findUnmet(trial, loss);
                if (failed.isEmpty()) {
                    return Optional.of(new Found(trial.conductor(loss), unmet));
                }
                unmet = failed.get();
            }
        }
        return Optional.empty();
    }

    private ConductorTrial trial(Candidates.Candidate candidate) {
        Laying laying = candidate.isSingle() ? single : Laying.of(duty, fuseRatingA, candidate);
        return new ConductorTrial(duty, candidate, laying);
    }

    private Optional<GovernedBy> findUnmet(ConductorTrial trial, ConductorTrial.Loss loss) {
        if (loss.dropPercent() > duty.voltageDropLimitPercent().value()) {
            return Optional.of(GovernedBy.VOLTAGE_DROP);
        }
        if (letThroughA2s.isPresent() && !trial.outlasts(letThroughA2s.get())) {
            return Optional.of(GovernedBy.SHORT_CIRCUIT);
        }
        return trial.isThickEnough() ? Optional.empty() : Optional.of(GovernedBy.MINIMUM_SIZE);
    }

    /** The one that may have the largest fuse, for a shortfall in ampacity. */
    SizedConductor strongest() {
        return best(Comparator.comparingDouble(trial -> trial.fuseLimitA().value()));
    }

    /** The one that loses least, for a shortfall in voltage. */
    SizedConductor stiffest() {
        return best(Comparator.comparingDouble(trial -> -trial.loss().dropPercent()));
    }

    private SizedConductor best(Comparator<ConductorTrial> order) {
        ConductorTrial best = candidates.stream().map(this::trial).max(order).orElseThrow();
        return best.conductor(best.loss());
    }
}
