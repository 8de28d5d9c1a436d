package wayside.sizing.brief;

/** Whose day-to-day spread the drawn days have. */
public enum DaySpread {
    /** The place's own. */
    PLACE,
    /** As Bendt published it: too dark on single days, in the tropics on whole weeks. */
    BENDT
}
