package wayside.sizing.system;

import java.util.Optional;
import java.util.OptionalDouble;
import wayside.sizing.brief.SystemWishes;
import wayside.sizing.trace.Assumption;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Expression;
import wayside.sizing.trace.Source;
import wayside.sizing.trace.Unit;
import wayside.sizing.wiring.CircuitDetails;
import wayside.sizing.wiring.CircuitTask;
import wayside.sizing.wiring.Feed;
import wayside.sizing.wiring.RuleSet;
import wayside.sizing.wiring.RuleSets;

/**
 * What all main circuits share, stated once: rule set, insulation, air around the cable, voltage drop.
 */
record CircuitDefaults(
        RuleSet rules, Derived insulationC, Derived ambientC, Derived pairCount, Derived dropLimitPercent) {
    private static final double AMBIENT_C = 30;
    private static final Expression PART = Expression.definition("u = u_all s");

    static CircuitDefaults of(Optional<String> code) {
        RuleSet rules = code.map(RuleSets::of).orElse(RuleSets.DEFAULT);
        return new CircuitDefaults(
                rules,
                rules.defaultInsulationC("insulation class", Optional.empty()),
                Derived.convention(
                        "ambient around the cable",
                        AMBIENT_C,
                        Unit.CELSIUS,
                        "What the ampacity tables are printed for; size a cable in hotter air as a circuit by itself",
                        Source.commonPractice()),
                Derived.convention(
                        "conductors that run together",
                        2,
                        Unit.COUNT,
                        "Each pair alone, not tied to others",
                        Source.commonPractice()),
                rules.defaultDropLimitPercent("voltage drop limit", Optional.empty()));
    }

    /** The same where a cable may lose only a part of what its whole way may. */
    CircuitDefaults losing(String name, double share) {
        Derived part = Derived.convention(
                name + ": part of the voltage drop limit",
                share,
                Unit.SHARE,
                "The limit holds for the whole way from battery to load, and its cables share it",
                Source.commonPractice());
        Derived limit =
                PART.value(name + ": voltage drop limit", Unit.PERCENT, dropLimitPercent.as("u_all"), part.as("s"));
        return new CircuitDefaults(rules, insulationC, ambientC, pairCount, limit);
    }

    static Assumption choice(SystemWishes wishes, RuleSet rules) {
        return Assumption.choice(
                wishes.at("rules"),
                "rule set for conductors and fuses",
                rules.code(),
                "The set that camper builders borrow most; state which one your local code follows",
                Source.commonPractice());
    }

    /** A circuit that may run for hours, in the living space. */
    CircuitTask task(String name, Derived currentA, Derived lengthM, CircuitVoltage voltage) {
        return task(name, currentA, lengthM, voltage, true, false);
    }

    /** A circuit whose current already holds what continuous current asks for. */
    CircuitTask shortTime(String name, Derived currentA, Derived lengthM, CircuitVoltage voltage) {
        return task(name, currentA, lengthM, voltage, false, false);
    }

    CircuitTask throughTheEngineSpace(String name, Derived currentA, Derived lengthM, CircuitVoltage voltage) {
        return task(name, currentA, lengthM, voltage, true, true);
    }

    private CircuitTask task(
            String name,
            Derived currentA,
            Derived lengthM,
            CircuitVoltage voltage,
            boolean continuous,
            boolean engineSpace) {
        return new CircuitTask(
                name,
                Optional.empty(),
                currentA,
                lengthM,
                voltage.nominalV(),
                voltage.highestV(),
                Optional.of(continuous),
                Optional.of(dropLimitPercent),
                Optional.of(insulationC),
                Optional.of(ambientC),
                Optional.of(pairCount),
                Optional.of(engineSpace),
                Optional.of(rules),
                new Feed.Branch(Optional.empty()),
                CircuitDetails.NONE);
    }

    /**
     * One-way length of a circuit, as given or as is usual.
     *
     * @param field JSON Pointer of the length
     */
    static Derived length(String name, String field, OptionalDouble given, double usualM) {
        return Derived.byDefault(
                        name + ": length, one way",
                        usualM,
                        Unit.METRE,
                        field,
                        "Usual in a van; measure the way of the cable",
                        Source.commonPractice())
                .unlessGiven(given);
    }
}
