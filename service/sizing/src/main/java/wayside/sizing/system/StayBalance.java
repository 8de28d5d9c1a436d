package wayside.sizing.system;

import wayside.sizing.journey.JourneyStay;
import wayside.sizing.trace.Derived;

/**
 * A stay's day: what must go into the bank, what engine and hookup put in, what is left for the sun.
 *
 * @param stay of the trip
 * @param needWh what the sun must put in [Wh], 0 when the others do it all
 * @param arrayW rated power that does it [W]; what no array can do without sun is left at 0
 * @param sunless whether the month has too little sun to count on
 * @param shut whether the sun is there, and the bank too cold or too hot to take it
 */
public record StayBalance(JourneyStay stay, Derived needWh, Derived arrayW, boolean sunless, boolean shut) {}
