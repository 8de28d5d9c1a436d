package wayside.sizing.wiring;

import java.util.Optional;
import wayside.sizing.brief.At;
import wayside.sizing.trace.Derived;

/**
 * A circuit to size, traced: what the recommendation asks for with figures that it worked out itself. What is left
 * empty gets the rule set's default, named as an assumption.
 *
 * @param name as the customer calls it
 * @param at where the request may say more about this circuit, if it can
 * @param currentA what it carries [A], above 0
 * @param lengthM one way [m], above 0
 * @param voltageV nominal [V], above 0
 * @param continuous whether it carries that for three hours or more; yes if empty
 * @param voltageDropLimitPercent of the nominal voltage [%]
 * @param insulationC temperature class of the insulation [C], 60 or more
 * @param ambientC around the cable [C]
 * @param bundledCount current-carrying conductors that run together, this pair included [1]
 * @param engineSpace whether it runs through the engine space; no if empty
 * @param rules the rule set; the default one if empty
 * @param feed what stands behind its fuse
 */
public record CircuitTask(
        String name,
        Optional<At> at,
        Derived currentA,
        Derived lengthM,
        Derived voltageV,
        Optional<Boolean> continuous,
        Optional<Derived> voltageDropLimitPercent,
        Optional<Derived> insulationC,
        Optional<Derived> ambientC,
        Optional<Derived> bundledCount,
        Optional<Boolean> engineSpace,
        Optional<RuleSet> rules,
        Feed feed) {

    /** A label of this circuit: {@code fridge: design current}. */
    String label(String what) {
        return name + ": " + what;
    }

    /** JSON Pointer of the field that could say something of it, if there is one. */
    Optional<String> field(String name) {
        return at.map(circuit -> circuit.field(name).pointer());
    }

    /** A branch with everything else open. */
    public static CircuitTask of(String name, Optional<At> at, Derived currentA, Derived lengthM, Derived voltageV) {
        return new CircuitTask(
                name,
                at,
                currentA,
                lengthM,
                voltageV,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                new Feed.Branch(at.map(circuit -> circuit.field("bank").pointer())));
    }

    /** The same circuit fed by something else: {@link Feed.Bank} for the main fuse at the battery. */
    public CircuitTask fedBy(Feed other) {
        return new CircuitTask(
                name,
                at,
                currentA,
                lengthM,
                voltageV,
                continuous,
                voltageDropLimitPercent,
                insulationC,
                ambientC,
                bundledCount,
                engineSpace,
                rules,
                other);
    }

    /** The same circuit under another rule set. */
    public CircuitTask under(RuleSet other) {
        return new CircuitTask(
                name,
                at,
                currentA,
                lengthM,
                voltageV,
                continuous,
                voltageDropLimitPercent,
                insulationC,
                ambientC,
                bundledCount,
                engineSpace,
                Optional.of(other),
                feed);
    }
}
