package wayside.sizing.yield;

import java.util.List;
import java.util.Optional;
import wayside.sizing.trace.Derived;

/**
 * What an array brings, month by month.
 *
 * @param solarPowerW rated power of the array [W]
 * @param months in the order asked
 * @param strings when the modules were described
 */
public record SolarYield(Derived solarPowerW, List<YieldMonth> months, Optional<StringCheck> strings) {
    public SolarYield {
        months = List.copyOf(months);
    }
}
