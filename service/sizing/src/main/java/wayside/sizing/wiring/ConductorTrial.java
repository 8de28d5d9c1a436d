package wayside.sizing.wiring;

import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Formula;
import wayside.sizing.trace.Unit;

/** One candidate under a circuit's duty: its ampacity, its fuse limit, its resistance, its drop. */
final class ConductorTrial {
    private static final Formula TOGETHER = Formula.definition("A_p = p A");
    private static final Formula BUNDLE =
            Formula.commonPractice("n_b = n + 2 (p - 1): conductors in parallel count as lying together");
    private static final Derived AT_20_C =
            Derived.computed("temperature of the resistance table", 20, Unit.CELSIUS, Formula.definition("T_0 = 20 C"));

    private final CircuitDuty duty;
    private final Candidates.Candidate candidate;

    private ConductorTrial(CircuitDuty duty, Candidates.Candidate candidate) {
        this.duty = duty;
        this.candidate = candidate;
    }

    static SizedConductor of(CircuitDuty duty, Candidates.Candidate candidate) {
        return new ConductorTrial(duty, candidate).conductor();
    }

    private SizedConductor conductor() {
        RuleSet rules = duty.rules();
        ConductorSize size = candidate.size();
        Derived count = Derived.computed(
                duty.label("conductors in parallel"),
                candidate.parallelCount(),
                Unit.COUNT,
                Formula.definition("p = conductors side by side each way"));
        Derived one = rules.ampacityA(size.ratedAs(), surroundings(count));
        Derived all = together("ampacity", one, count);
        Derived resistance = resistance(all);
        VoltageDrop drop = VoltageDrop.of(duty, resistance, count);
        return new SizedConductor(
                size,
                count,
                area(size),
                all,
                together("largest fuse", rules.fuseLimitA(size.ratedAs(), one), count),
                together("largest fuse permitted", rules.permittedFuseA(size.ratedAs(), one), count),
                resistance,
                drop.dropV(),
                drop.dropPercent());
    }

    private Surroundings surroundings(Derived count) {
        Derived bundled = duty.surroundings().bundledCount();
        return candidate.parallelCount() == 1
                ? duty.surroundings()
                : duty.surroundings()
                        .bundled(Derived.computed(
                                duty.label("conductors that run together"),
                                bundled.value() + 2 * (count.value() - 1),
                                Unit.COUNT,
                                BUNDLE,
                                bundled.as("n"),
                                count.as("p")));
    }

    private Derived together(String what, Derived one, Derived count) {
        return candidate.parallelCount() == 1
                ? one
                : Derived.computed(
                        duty.label(what + " of the conductors together"),
                        count.value() * one.value(),
                        Unit.AMPERE,
                        TOGETHER,
                        count.as("p"),
                        one.as("A"));
    }

    private Derived area(ConductorSize size) {
        return size instanceof ConductorSize.Metric metric
                ? metric.areaMm2()
                : duty.rules().areaMm2(size.ratedAs());
    }

    private Derived resistance(Derived ampacityA) {
        Derived copper = CopperTemperature.of(duty, ampacityA);
        return candidate.size() instanceof ConductorSize.Metric metric
                ? CopperResistance.at(metric.title() + ": resistance", metric.resistance20OhmPerKm(), AT_20_C, copper)
                : duty.rules().resistanceOhmPerKm(candidate.size().ratedAs(), copper);
    }
}
