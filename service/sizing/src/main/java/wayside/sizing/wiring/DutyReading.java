package wayside.sizing.wiring;

import java.util.ArrayList;
import java.util.List;
import wayside.sizing.trace.Assumption;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Formula;
import wayside.sizing.trace.Source;
import wayside.sizing.trace.Unit;

/** Fills in what a task left open and works out what follows at once: design current, round trip, highest voltage. */
final class DutyReading {
    /** NFPA 70, 210.20(A) and 215.3: the device carries 125 % of a continuous load. */
    private static final Formula CONTINUOUS = new Formula(
            "I_d = 1.25 I", Source.standard("NFPA 70 National Electrical Code, 2023", "210.20(A): continuous loads"));

    private static final Formula SHORT_TIME = Formula.definition("I_d = I");
    private static final Formula ROUND_TRIP = Formula.definition("L_2 = 2 L");

    /** What chargers hold on a 12 V bus while they fill. Common practice, no source. */
    private static final double CHARGING_V_AT_12 = 14.4;

    private static final Formula HIGHEST =
            Formula.commonPractice("V_max = V 14.4 / 12: chargers hold 14.4 V on a 12 V bus");

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
        Derived current = task.currentA();
        return new CircuitDuty(
                task.name(),
                rules,
                current,
                designCurrent(),
                task.lengthM(),
                Derived.computed(
                        label("round trip"),
                        2 * task.lengthM().value(),
                        Unit.METRE,
                        ROUND_TRIP,
                        task.lengthM().as("L")),
                task.voltageV(),
                highestVoltage(),
                task.voltageDropLimitPercent()
                        .orElseGet(() -> rules.defaultDropLimitPercent(task.field("voltageDropLimitPercent"))),
                surroundings(),
                InterruptDemand.of(task.feed()),
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
        Derived current = task.currentA();
        boolean continuous = task.continuous().orElseGet(this::continuousByDefault);
        return Derived.computed(
                label("design current"),
                continuous ? 1.25 * current.value() : current.value(),
                Unit.AMPERE,
                continuous ? CONTINUOUS : SHORT_TIME,
                current.as("I"));
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
        return Derived.computed(
                label("highest voltage"),
                task.voltageV().value() * CHARGING_V_AT_12 / 12,
                Unit.VOLT,
                HIGHEST,
                task.voltageV().as("V"));
    }

    private Surroundings surroundings() {
        boolean engineSpace = task.engineSpace().orElseGet(this::elsewhereByDefault);
        Derived insulation = task.insulationC().orElseGet(() -> rules.defaultInsulationC(task.field("insulationC")));
        Derived bundled = task.bundledCount()
                .orElseGet(() -> Derived.leftOpen(
                        "conductors that run together",
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

    private String label(String what) {
        return task.name() + ": " + what;
    }
}
