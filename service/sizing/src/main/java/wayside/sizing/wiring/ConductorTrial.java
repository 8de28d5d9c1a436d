package wayside.sizing.wiring;

import java.util.function.Function;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Formula;
import wayside.sizing.trace.Unit;

/** One candidate under a circuit's duty. What it carries is worked out at once, what it loses only when asked for. */
final class ConductorTrial {
    private static final Formula TOGETHER = Formula.definition("A_p = p A");
    private static final Formula BUNDLE =
            Formula.commonPractice("n_b = n + 2 (p - 1): conductors in parallel count as lying together");
    private static final Derived AT_20_C =
            Derived.computed("temperature of the resistance table", 20, Unit.CELSIUS, Formula.definition("T_0 = 20 C"));

    private final CircuitDuty duty;
    private final Candidates.Candidate candidate;
    private final Derived ampacityOfOneA;
    private final Derived ampacityA;

    ConductorTrial(CircuitDuty duty, Candidates.Candidate candidate) {
        this.duty = duty;
        this.candidate = candidate;
        this.ampacityOfOneA = duty.rules().ampacityA(gauge(), surroundings());
        this.ampacityA = together("ampacity", gauge -> ampacityOfOneA);
    }

    boolean isThickEnough() {
        return gauge().isAtLeast(duty.rules().thinnest());
    }

    boolean carriesTheCurrent() {
        return ampacityA.value() >= duty.designCurrentA().value();
    }

    boolean isProtectedBy(Derived fuseRatingA) {
        return fuseLimitA().value() >= fuseRatingA.value();
    }

    boolean isWithinDrop() {
        return dropPercent() <= duty.voltageDropLimitPercent().value();
    }

    double dropPercent() {
        return drop(resistance()).dropPercent().value();
    }

    /** Of the conductors together [A]. */
    Derived fuseLimitA() {
        return together("largest fuse", gauge -> duty.rules().fuseLimitA(gauge, ampacityOfOneA));
    }

    SizedConductor conductor() {
        Derived resistance = resistance();
        VoltageDrop drop = drop(resistance);
        return new SizedConductor(
                candidate.size(),
                candidate.parallelCount(),
                area(),
                ampacityA,
                fuseLimitA(),
                together("largest fuse permitted", gauge -> duty.rules().permittedFuseA(gauge, ampacityOfOneA)),
                resistance,
                drop.dropV(),
                drop.dropPercent());
    }

    private Gauge gauge() {
        return candidate.size().ratedAs();
    }

    private Surroundings surroundings() {
        if (candidate.isSingle()) {
            return duty.surroundings();
        }
        Derived bundled = duty.surroundings().bundledCount();
        Derived count = candidate.parallelCount();
        return duty.surroundings()
                .bundled(Derived.computed(
                        duty.label("conductors that run together"),
                        bundled.value() + 2 * (count.value() - 1),
                        Unit.COUNT,
                        BUNDLE,
                        bundled.as("n"),
                        count.as("p")));
    }

    private Derived together(String what, Function<Gauge, Derived> ofOne) {
        Derived one = ofOne.apply(gauge());
        Derived count = candidate.parallelCount();
        return candidate.isSingle()
                ? one
                : Derived.computed(
                        duty.label(what + " of the conductors together"),
                        count.value() * one.value(),
                        Unit.AMPERE,
                        TOGETHER,
                        count.as("p"),
                        one.as("A"));
    }

    private Derived area() {
        return candidate.size() instanceof ConductorSize.Metric metric
                ? metric.areaMm2()
                : duty.rules().areaMm2(gauge());
    }

    private VoltageDrop drop(Derived resistance) {
        return VoltageDrop.of(duty, resistance, candidate.parallelCount());
    }

    private Derived resistance() {
        Derived copper = CopperTemperature.of(duty, ampacityA);
        return candidate.size() instanceof ConductorSize.Metric metric
                ? CopperResistance.at(metric.title() + ": resistance", metric.resistance20OhmPerKm(), AT_20_C, copper)
                : duty.rules().resistanceOhmPerKm(gauge(), copper);
    }
}
