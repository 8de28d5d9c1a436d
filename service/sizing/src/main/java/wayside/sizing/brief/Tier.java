package wayside.sizing.brief;

/** How much a load matters when the battery runs low. */
public enum Tier {
    /** Somebody's health or life hangs on it. */
    VITAL,
    /** The trip fails when it goes short. */
    ESSENTIAL,
    /** It stops while a quarter of the usable energy is left for the others. */
    COMFORT
}
