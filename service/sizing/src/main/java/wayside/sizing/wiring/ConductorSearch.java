package wayside.sizing.wiring;

import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import wayside.sizing.trace.Derived;

/** Tries candidates from thin to thick until one meets every demand, and says which demand was the last to be met. */
final class ConductorSearch {
    private final CircuitDuty duty;
    private final Derived fuseRatingA;
    private final List<SizedConductor> trials;

    private ConductorSearch(CircuitDuty duty, Derived fuseRatingA, List<Candidates.Candidate> candidates) {
        this.duty = duty;
        this.fuseRatingA = fuseRatingA;
        this.trials = candidates.stream()
                .map(candidate -> ConductorTrial.of(duty, candidate))
                .toList();
    }

    static ConductorSearch among(CircuitDuty duty, Derived fuseRatingA, List<Candidates.Candidate> candidates) {
        return new ConductorSearch(duty, fuseRatingA, candidates);
    }

    /** The first that meets every demand; empty when none does. */
    Optional<SizedConductor> findThinnest() {
        return trials.stream()
                .filter(this::isThickEnough)
                .filter(this::isProtected)
                .filter(this::isWithinDrop)
                .findFirst();
    }

    /** The demand that a thinner one than the chosen would not meet; in doubt the first of the enum. */
    GovernedBy governing(SizedConductor chosen) {
        int place = trials.indexOf(chosen);
        if (place == first(this::carries)) {
            return GovernedBy.AMPACITY;
        }
        if (place == first(this::isProtected)) {
            return GovernedBy.FUSE;
        }
        return place == first(this::isWithinDrop) ? GovernedBy.VOLTAGE_DROP : GovernedBy.MINIMUM_SIZE;
    }

    /** The trial that carries most, for a shortfall in ampacity. */
    SizedConductor strongest() {
        return trials.stream()
                .reduce((a, b) -> b.fuseLimitA().value() > a.fuseLimitA().value() ? b : a)
                .orElseThrow();
    }

    /** The trial that loses least, for a shortfall in voltage. */
    SizedConductor stiffest() {
        return trials.stream()
                .reduce((a, b) -> b.voltageDropV().value() < a.voltageDropV().value() ? b : a)
                .orElseThrow();
    }

    private int first(Predicate<SizedConductor> meets) {
        for (int i = 0; i < trials.size(); i++) {
            if (meets.test(trials.get(i))) {
                return i;
            }
        }
        return trials.size();
    }

    private boolean carries(SizedConductor trial) {
        return trial.ampacityA().value() >= duty.designCurrentA().value();
    }

    private boolean isProtected(SizedConductor trial) {
        return trial.fuseLimitA().value() >= fuseRatingA.value();
    }

    private boolean isWithinDrop(SizedConductor trial) {
        return trial.voltageDropPercent().value()
                <= duty.voltageDropLimitPercent().value();
    }

    private boolean isThickEnough(SizedConductor trial) {
        return trial.size().ratedAs().isAtLeast(duty.rules().thinnest());
    }
}
