package wayside.sizing.endurance;

/** Something that watches the state of charge, hour by hour. */
interface StateTrack {
    /** Nobody watches. */
    StateTrack NONE = (hour, stateOfCharge) -> {};

    /**
     * An hour is over.
     *
     * @param hour of the trip, from 0
     */
    void hour(int hour, double stateOfCharge);
}
