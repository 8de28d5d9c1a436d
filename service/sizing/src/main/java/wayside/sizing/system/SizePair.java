package wayside.sizing.system;

import java.util.Optional;
import wayside.sizing.trace.Derived;

/**
 * Bank and array that were found elsewhere, and are to be built into a whole system.
 *
 * @param nominalEnergyWh of the bank [Wh]; sized by days of autonomy if empty
 * @param solarPowerW of the array [W]; sized by the worst month if empty
 * @param bank of whole batteries, where it is one
 * @param array of whole modules, where it is one
 * @param engineChargerA output of the charger on the engine [A]; chosen to put back a day if empty
 * @param neededWh the smallest bank of any size that will do [Wh], where one was looked for
 */
public record SizePair(
        Optional<Derived> nominalEnergyWh,
        Optional<Derived> solarPowerW,
        Optional<BuyableBank> bank,
        Optional<BuyableArray> array,
        Optional<Derived> engineChargerA,
        Optional<Derived> neededWh) {
    public static final SizePair OPEN = new SizePair(
            Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());
}
