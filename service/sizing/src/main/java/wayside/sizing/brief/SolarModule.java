package wayside.sizing.brief;

import java.util.OptionalDouble;

/**
 * A solar module by its label, at standard test conditions.
 *
 * @param at where it was given
 * @param openCircuitV [V], above 0
 * @param workingV at its best point [V], above 0, below the open-circuit voltage
 * @param shortCircuitA [A], above 0
 * @param voltagePerK temperature coefficient of the open-circuit voltage [1/K], negative
 */
public record SolarModule(At at, double openCircuitV, double workingV, double shortCircuitA, OptionalDouble voltagePerK)
        implements Placed {
    public SolarModule(double openCircuitV, double workingV, double shortCircuitA, OptionalDouble voltagePerK) {
        this(At.ROOT, openCircuitV, workingV, shortCircuitA, voltagePerK);
    }
}
