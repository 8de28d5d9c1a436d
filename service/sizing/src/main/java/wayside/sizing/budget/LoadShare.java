package wayside.sizing.budget;

import wayside.sizing.demand.LoadDemand;
import wayside.sizing.trace.Derived;

/**
 * A load and its part in the day.
 *
 * @param share of the energy of all loads [share]
 */
public record LoadShare(LoadDemand demand, Derived share) {}
