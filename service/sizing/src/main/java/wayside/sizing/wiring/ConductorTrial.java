package wayside.sizing.wiring;

import java.util.function.BiFunction;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Expression;
import wayside.sizing.trace.Unit;

/** One candidate under a circuit's duty. What it carries is worked out at once, what it loses only when asked for. */
final class ConductorTrial {
    private static final Expression TOGETHER = Expression.definition("A_p = p A");

    private final CircuitDuty duty;
    private final Candidates.Candidate candidate;
    private final ConductorLabels labels;
    private final ConductorLabels labelsOfOne;
    private final Derived parallelCount;
    private final Derived ampacityOfOneA;
    private final Derived ampacityA;

    ConductorTrial(CircuitDuty duty, Candidates.Candidate candidate, Laying laying) {
        this.duty = duty;
        this.candidate = candidate;
        this.labels = new ConductorLabels(duty.name(), candidate.title());
        this.labelsOfOne =
                candidate.isSingle() ? labels : new ConductorLabels(duty.name(), "one of " + candidate.title());
        this.parallelCount = laying.parallelCount();
        this.ampacityOfOneA = duty.rules().ampacityA(labelsOfOne, gauge(), laying.derating());
        this.ampacityA = together("ampacity", (of, gauge) -> ampacityOfOneA);
    }

    boolean isThickEnough() {
        return gauge().isAtLeast(duty.rules().thinnest())
                && duty.details().thinnest().map(gauge()::isAtLeast).orElse(true);
    }

    boolean carriesTheCurrent() {
        return ampacityA.value() >= duty.designCurrentA().value();
    }

    boolean isProtected(Derived fuseRatingA) {
        return fuseLimitA().value() >= fuseRatingA.value();
    }

    /** What it loses at the circuit's current. */
    Loss loss() {
        Derived resistance = resistance();
        return new Loss(resistance, VoltageDrop.of(duty, labels, resistance, parallelCount));
    }

    /** Resistance of one conductor [Ohm/km], and the drop. */
    record Loss(Derived resistanceOhmPerKm, VoltageDrop drop) {
        double dropPercent() {
            return drop.dropPercent().value();
        }
    }

    boolean outlasts(Derived letThroughA2s) {
        return outlastedA2s().value() >= letThroughA2s.value();
    }

    private Derived outlastedA2s() {
        return ShortCircuitHeat.outlastedA2s(
                labelsOfOne, area(), duty.surroundings().insulationC());
    }

    /** Of the conductors together [A]. */
    Derived fuseLimitA() {
        return together("largest fuse", (of, gauge) -> duty.rules().fuseLimitA(of, gauge, ampacityOfOneA));
    }

    SizedConductor conductor(Loss loss) {
        return new SizedConductor(
                candidate.size(),
                parallelCount,
                area(),
                ampacityA,
                fuseLimitA(),
                together("largest fuse permitted", (of, gauge) -> duty.rules()
                        .permittedFuseA(of, gauge, ampacityOfOneA)),
                loss.resistanceOhmPerKm(),
                outlastedA2s(),
                loss.drop().dropV(),
                loss.drop().dropPercent());
    }

    private Gauge gauge() {
        return candidate.size().ratedAs();
    }

    private Derived together(String what, BiFunction<ConductorLabels, Gauge, Derived> ofOne) {
        Derived one = ofOne.apply(labelsOfOne, gauge());
        return candidate.isSingle()
                ? one
                : TOGETHER.value(labels.of(what), Unit.AMPERE, parallelCount.as("p"), one.as("A"));
    }

    private Derived area() {
        return candidate.size() instanceof ConductorSize.Metric metric
                ? metric.areaMm2()
                : duty.rules().areaMm2(gauge());
    }

    private Derived resistance() {
        Derived copper = CopperTemperature.of(duty, labels, ampacityA);
        return candidate.size() instanceof ConductorSize.Metric metric
                ? CopperResistance.from20C(labelsOfOne.of("resistance"), metric.resistance20OhmPerKm(), copper)
                : duty.rules().resistanceOhmPerKm(labelsOfOne, gauge(), copper);
    }
}
