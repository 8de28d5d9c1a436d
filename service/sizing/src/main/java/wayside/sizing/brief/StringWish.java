package wayside.sizing.brief;

import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * How the modules are wired, for the check of their strings.
 *
 * @param at where it was given
 * @param seriesCount modules in a string; as many as the controller stands if absent
 * @param parallelCount strings side by side; 1 if absent
 * @param controllerMaximumV the highest voltage that the charge controller stands [V]
 * @param coldestC air on the coldest morning [C]; from the months if absent
 */
public record StringWish(
        At at,
        SolarModule module,
        OptionalInt seriesCount,
        OptionalInt parallelCount,
        OptionalDouble controllerMaximumV,
        OptionalDouble coldestC)
        implements Placed {
    public StringWish(
            SolarModule module,
            OptionalInt seriesCount,
            OptionalInt parallelCount,
            OptionalDouble controllerMaximumV,
            OptionalDouble coldestC) {
        this(At.ROOT, module, seriesCount, parallelCount, controllerMaximumV, coldestC);
    }

    public static StringWish of(SolarModule module) {
        return new StringWish(
                module, OptionalInt.empty(), OptionalInt.empty(), OptionalDouble.empty(), OptionalDouble.empty());
    }
}
