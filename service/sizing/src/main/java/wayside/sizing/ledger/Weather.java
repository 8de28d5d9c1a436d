package wayside.sizing.ledger;

/** Something that makes the sun and the air of a trip, run by run. */
public interface Weather {
    /** Hours of the trip, from its first midnight. */
    int hours();

    /**
     * Fills one run.
     *
     * @param run its place in the row; the same run has the same weather for ever
     * @param into has as many hours as the trip
     */
    void fill(int run, RunWeather into);

    /**
     * A run to read from.
     *
     * @param buffer is filled with it where the weather does not keep its runs
     */
    default RunWeather run(int run, RunWeather buffer) {
        fill(run, buffer);
        return buffer;
    }
}
