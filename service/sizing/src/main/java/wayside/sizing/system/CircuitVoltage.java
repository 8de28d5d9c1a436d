package wayside.sizing.system;

import wayside.sizing.trace.Derived;

/**
 * What a circuit is at.
 *
 * @param nominalV what its drop is a share of [V]
 * @param highestV that it reaches, which its fuse must be rated for [V]
 */
record CircuitVoltage(Derived nominalV, Derived highestV) {}
