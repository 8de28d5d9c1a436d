package wayside.sizing.ledger;

import wayside.sizing.trace.Unit;

/** Something that makes the sun of a trip, run by run. */
public interface Weather {
    /** Hours of the trip, from its first midnight. */
    int hours();

    /**
     * Fills one run.
     *
     * @param run its place in the row; the same run has the same weather for ever
     * @param yieldWhPerW energy out of the charge controller for each rated watt of array, by hour [Wh/W]
     */
    void fill(int run, double[] yieldWhPerW);

    /**
     * Fills which kind of day each day of one run is, of those that its stay has for the temperature of the bank. Where a stay has
     * one kind, there is nothing to fill.
     *
     * @param kindOfDay by day of the trip, all 0 until now
     */
    default void fillKinds(int run, int[] kindOfDay) {}

    /** Days of the trip. */
    default int days() {
        return hours() / Unit.HOURS_PER_DAY;
    }
}
