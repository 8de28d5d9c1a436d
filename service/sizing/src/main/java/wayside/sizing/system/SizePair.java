package wayside.sizing.system;

import java.util.Optional;
import wayside.sizing.trace.Derived;

/**
 * Bank and array that were found elsewhere, and are to be built into a whole system.
 *
 * @param nominalEnergyWh of the bank [Wh]; sized by days of autonomy if empty
 * @param solarPowerW of the array [W]; sized by the worst month if empty
 */
public record SizePair(Optional<Derived> nominalEnergyWh, Optional<Derived> solarPowerW) {
    public static final SizePair OPEN = new SizePair(Optional.empty(), Optional.empty());
}
