package wayside.sizing.chance;

import java.util.List;
import java.util.Optional;
import wayside.sizing.trace.Derived;

/**
 * A system with a smaller bank that is not enough for the trip as it was asked, and the smallest changes with which it is.
 *
 * @param nominalEnergyWh rated energy of its bank [Wh]
 * @param solarPowerW rated power of its array [W]
 * @param engineChargerA output of its charger on the engine [A]; none where nothing drives
 * @param changes the least of each kind; those that ask nothing of the travellers come last
 */
public record SmallerSystem(
        Derived nominalEnergyWh, Derived solarPowerW, Optional<Derived> engineChargerA, List<TripChange> changes) {
    public SmallerSystem {
        changes = List.copyOf(changes);
    }
}
