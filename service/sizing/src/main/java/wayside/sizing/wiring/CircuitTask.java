package wayside.sizing.wiring;

import java.util.Optional;
import wayside.sizing.trace.Derived;

/**
 * A circuit to size, traced: what the recommendation asks for with figures that it worked out itself. What is left
 * empty gets the rule set's default, named as an assumption under the path.
 *
 * @param name as the customer calls it
 * @param path JSON Pointer under which the request may say more about this circuit
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
        String path,
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

    /** A branch with everything else open. */
    public static CircuitTask of(String name, String path, Derived currentA, Derived lengthM, Derived voltageV) {
        return new CircuitTask(
                name,
                path,
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
                new Feed.Branch(path + "/bank"));
    }

    /** The same circuit fed by something else: {@link Feed.Bank} for the main fuse at the battery. */
    public CircuitTask fedBy(Feed other) {
        return new CircuitTask(
                name,
                path,
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
                path,
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
