package wayside.sizing.brief;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * A cable to size.
 *
 * @param at where it was given
 * @param name as the customer calls it
 * @param current what it carries
 * @param continuous whether it carries that for three hours or more; yes if absent
 * @param lengthM one way [m], above 0
 * @param voltageV nominal [V]; 12 if absent
 * @param voltageDropLimitPercent of the nominal voltage, both ways [%]; by the rule set's class if absent
 * @param insulationC temperature class of the insulation [C], 60 or more
 * @param ambientC around the cable [C]
 * @param bundledConductors current-carrying conductors that run together, this pair included
 * @param engineSpace whether it runs through the engine space; no if absent
 * @param rules code of the rule set; the default set if absent
 * @param feed what stands behind its fuse
 */
public record CircuitRun(
        At at,
        String name,
        CircuitCurrent current,
        Optional<Boolean> continuous,
        double lengthM,
        OptionalDouble voltageV,
        OptionalDouble voltageDropLimitPercent,
        OptionalDouble insulationC,
        OptionalDouble ambientC,
        OptionalInt bundledConductors,
        Optional<Boolean> engineSpace,
        Optional<String> rules,
        CircuitFeed feed)
        implements Placed {
    /** A branch of so many amperes over so many metres, everything else open. */
    public static CircuitRun of(String name, double currentA, double lengthM) {
        return new CircuitRun(
                At.ROOT,
                name,
                new CircuitCurrent.Amps(currentA),
                Optional.empty(),
                lengthM,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalInt.empty(),
                Optional.empty(),
                Optional.empty(),
                new CircuitFeed.Branch());
    }
}
