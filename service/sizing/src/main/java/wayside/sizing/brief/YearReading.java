package wayside.sizing.brief;

/** What is read from a typical year. */
public enum YearReading {
    /** Its own hours are replayed. */
    HOURS,
    /** Its months' means, about which days are drawn. */
    MEANS
}
