package wayside.sizing.endurance;

import wayside.sizing.brief.Load;
import wayside.sizing.trace.Derived;

/**
 * What a load gets on such trips.
 *
 * @param energyShare of the energy that it wants, the mean of all runs [share]
 * @param fullNights of a trip on which it gets all of it, the mean of all runs
 */
public record ServedLoad(Load load, Derived energyShare, Derived fullNights) {}
