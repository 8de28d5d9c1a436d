package wayside.sizing.system;

import java.util.Optional;
import java.util.OptionalDouble;
import wayside.sizing.trace.Assumed;
import wayside.sizing.trace.Assumption;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Source;
import wayside.sizing.trace.Unit;
import wayside.sizing.wiring.CircuitTask;
import wayside.sizing.wiring.Feed;
import wayside.sizing.wiring.RuleSet;
import wayside.sizing.wiring.RuleSets;

/**
 * What all main circuits share, stated once: rule set, insulation, air around the cable, voltage drop.
 */
record CircuitDefaults(
        RuleSet rules, Derived insulationC, Derived ambientC, Derived pairCount, Derived dropLimitPercent) {
    private static final String PATH = Site.SYSTEM + "/rules";
    private static final double AMBIENT_C = 30;

    static CircuitDefaults of(Optional<String> code) {
        RuleSet rules = code.map(RuleSets::of).orElse(RuleSets.DEFAULT);
        return new CircuitDefaults(
                rules,
                underRules(rules.defaultInsulationC(PATH)),
                Derived.assumed(
                        "ambient around the cable",
                        AMBIENT_C,
                        Unit.CELSIUS,
                        PATH,
                        "What the ampacity tables are printed for; size a cable in hotter air as a circuit by itself",
                        Source.commonPractice()),
                Derived.assumed(
                        "conductors that run together",
                        2,
                        Unit.COUNT,
                        PATH,
                        "Each pair alone, not tied to others",
                        Source.commonPractice()),
                underRules(rules.defaultDropLimitPercent(PATH)));
    }

    private static Derived underRules(Derived value) {
        return value instanceof Assumed assumed
                ? new Assumed(assumed.label(), assumed.quantity(), PATH, assumed.reason(), assumed.source())
                : value;
    }

    static Assumption choice(RuleSet rules) {
        return Assumption.choice(
                PATH,
                "rule set for conductors and fuses",
                rules.code(),
                "The set that camper builders borrow most; state which one your local code follows",
                Source.commonPractice());
    }

    /** A circuit that may run for hours, in the living space. */
    CircuitTask task(String name, Derived currentA, Derived lengthM, Derived voltageV) {
        return task(name, currentA, lengthM, voltageV, true, false);
    }

    /** A circuit whose current already holds what continuous current asks for. */
    CircuitTask shortTime(String name, Derived currentA, Derived lengthM, Derived voltageV) {
        return task(name, currentA, lengthM, voltageV, false, false);
    }

    CircuitTask throughTheEngineSpace(String name, Derived currentA, Derived lengthM, Derived voltageV) {
        return task(name, currentA, lengthM, voltageV, true, true);
    }

    private CircuitTask task(
            String name, Derived currentA, Derived lengthM, Derived voltageV, boolean continuous, boolean engineSpace) {
        return new CircuitTask(
                name,
                PATH,
                currentA,
                lengthM,
                voltageV,
                Optional.of(continuous),
                Optional.of(dropLimitPercent),
                Optional.of(insulationC),
                Optional.of(ambientC),
                Optional.of(pairCount),
                Optional.of(engineSpace),
                Optional.of(rules),
                new Feed.Branch(PATH));
    }

    /**
     * One-way length of a circuit, as given or as is usual.
     *
     * @param field of {@code circuitLengthsM}
     */
    static Derived length(String name, String field, OptionalDouble given, double usualM) {
        String path = Site.SYSTEM + "/circuitLengthsM/" + field;
        return Derived.assumed(
                        name + ": length, one way",
                        usualM,
                        Unit.METRE,
                        path,
                        "Usual in a van; measure the way of the cable",
                        Source.commonPractice())
                .unlessGiven(given);
    }
}
