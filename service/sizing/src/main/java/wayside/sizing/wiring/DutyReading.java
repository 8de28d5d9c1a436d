package wayside.sizing.wiring;

import java.util.ArrayList;
import java.util.List;
import wayside.sizing.trace.Assumption;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Expression;
import wayside.sizing.trace.Source;
import wayside.sizing.trace.Unit;

/** Fills in what a task left open and works out what follows at once: design current, round trip, highest voltage. */
final class DutyReading {
    /** NFPA 70, 210.20(A) and 215.3: the device carries 125 % of a continuous load. */
    private static final Expression CONTINUOUS = Expression.of(
                    "I_d = k I",
                    Source.standard("NFPA 70 National Electrical Code, 2023", "210.20(A): continuous loads"))
            .with("k", 1.25, Unit.COUNT);

    private static final Expression SHORT_TIME = Expression.definition("I_d = I");
    private static final Expression ROUND_TRIP = Expression.definition("L_2 = 2 L");

    /** Chargers hold 14.4 V on a 12 V bus while they fill. */
    private static final Expression HIGHEST = Expression.commonPractice("V_max = V V_c / V_n")
            .with("V_c", 14.4, Unit.VOLT)
            .with("V_n", 12, Unit.VOLT);

    private final CircuitTask task;
    private final RuleSet rules;
    private final List<Assumption> choices = new ArrayList<>();

    private DutyReading(CircuitTask task) {
        this.task = task;
        this.rules = task.rules().orElseGet(this::defaultRules);
    }

    static CircuitDuty of(CircuitTask task) {
        return new DutyReading(task).duty();
    }

    private CircuitDuty duty() {
        return new CircuitDuty(
                task.name(),
                rules,
                task.currentA(),
                designCurrent(),
                task.lengthM(),
                ROUND_TRIP.value(
                        task.label("round trip"), Unit.METRE, task.lengthM().as("L")),
                task.voltageV(),
                highestVoltage(),
                task.voltageDropLimitPercent()
                        .orElseGet(() -> rules.defaultDropLimitPercent(
                                task.label("voltage drop limit"), task.field("voltageDropLimitPercent"))),
                surroundings(),
                InterruptDemand.of(task.label("current the fuse must break"), task.feed()),
                task.feed(),
                choices);
    }

    private RuleSet defaultRules() {
        choices.add(Assumption.leftOpen(
                task.field("rules"),
                "rule set for conductors",
                RuleSets.DEFAULT.code(),
                "The set that camper builders borrow most; state which one your local code follows",
                Source.commonPractice()));
        return RuleSets.DEFAULT;
    }

    private Derived designCurrent() {
        boolean continuous = task.continuous().orElseGet(this::continuousByDefault);
        return (continuous ? CONTINUOUS : SHORT_TIME)
                .value(
                        task.label("design current"),
                        Unit.AMPERE,
                        task.currentA().as("I"));
    }

    private boolean continuousByDefault() {
        choices.add(Assumption.leftOpen(
                task.field("continuous"),
                "current flows for three hours or more",
                "true",
                "Most loads of a camper can run for three hours or more",
                Source.commonPractice()));
        return true;
    }

    private Derived highestVoltage() {
        return HIGHEST.value(
                task.label("highest voltage"), Unit.VOLT, task.voltageV().as("V"));
    }

    private Surroundings surroundings() {
        boolean engineSpace = task.engineSpace().orElseGet(this::elsewhereByDefault);
        Derived insulation = task.insulationC()
                .orElseGet(() -> rules.defaultInsulationC(task.label("insulation class"), task.field("insulationC")));
        Derived bundled = task.bundledCount()
                .orElseGet(() -> Derived.leftOpen(
                        task.label("conductors that run together"),
                        2,
                        Unit.COUNT,
                        task.field("bundledConductors"),
                        "This pair alone, not tied to others",
                        Source.commonPractice()));
        return new Surroundings(insulation, AmbientReading.of(task, engineSpace), bundled, engineSpace);
    }

    private boolean elsewhereByDefault() {
        choices.add(Assumption.leftOpen(
                task.field("engineSpace"),
                "cable runs through the engine space",
                "false",
                "In the living space or the load bed",
                Source.commonPractice()));
        return false;
    }
}
