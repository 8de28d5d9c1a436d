package wayside.sizing.brief;

import java.util.OptionalDouble;

/**
 * A solar module by its label, at standard test conditions.
 *
 * @param openCircuitV [V], above 0
 * @param workingV at its best point [V], above 0, below the open-circuit voltage
 * @param shortCircuitA [A], above 0
 * @param voltagePerK temperature coefficient of the open-circuit voltage [1/K], negative
 */
public record SolarModule(double openCircuitV, double workingV, double shortCircuitA, OptionalDouble voltagePerK) {}
