package wayside.sizing.storage;

import wayside.sizing.trace.Derived;

/**
 * A figure that scatters in the trade.
 *
 * @param low the least that is seen
 * @param typical what to reckon with
 * @param high the most that is seen
 */
public record Range(Derived low, Derived typical, Derived high) {}
