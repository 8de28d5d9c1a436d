package wayside.sizing.storage;

/**
 * What {@link ChargeAcceptance} makes of one hour of a steady source, in closed form for the ledger's loop: all that does not
 * change from hour to hour is worked out once.
 */
public final class HourOfCharge {
    private final double maximumPowerW;
    private final double chargeEfficiency;
    /** Room at which a source's power is just what the taper takes, for each watt of it [h]. */
    private final double taperRoomHours;

    private final double decayPerHour;
    /** What an hour in the taper leaves of the room: {@code exp(-decay)}. */
    private final double hourOfTaper;

    /**
     * Of a bank.
     *
     * @param maximumPowerW taken below the knee [W], above 0
     * @param knee below 1 [share]
     * @param chargeEfficiency stored per energy put in [share]
     * @param energyWh of the full bank [Wh], above 0
     */
    public HourOfCharge(double maximumPowerW, double knee, double chargeEfficiency, double energyWh) {
        this.maximumPowerW = maximumPowerW;
        this.chargeEfficiency = chargeEfficiency;
        taperRoomHours = (1 - knee) * energyWh / maximumPowerW;
        decayPerHour = maximumPowerW * chargeEfficiency / (energyWh * (1 - knee));
        hourOfTaper = Math.exp(-decayPerHour);
    }

    /**
     * Whether the hour ends before the bank takes less than the source offers.
     *
     * @param offeredW by the source [W], 0 or more
     * @param roomWh left in the bank [Wh]
     */
    public boolean takesAll(double offeredW, double roomWh) {
        return offeredW <= maximumPowerW && roomWh >= offeredW * (chargeEfficiency + taperRoomHours);
    }

    /**
     * Energy that the hour puts into the cells.
     *
     * @param offeredW by the source [W], 0 or more
     * @param roomWh left in the bank [Wh]
     * @return [Wh]
     */
    public double storedWh(double offeredW, double roomWh) {
        double steady = offeredW < maximumPowerW ? offeredW : maximumPowerW;
        double perHour = steady * chargeEfficiency;
        double taperRoom = steady * taperRoomHours;
        if (roomWh - perHour >= taperRoom) {
            return perHour;
        }
        if (roomWh <= taperRoom) {
            return roomWh * (1 - hourOfTaper);
        }
        double hoursToTaper = (roomWh - taperRoom) / perHour;
        return roomWh - taperRoom * Math.exp(-decayPerHour * (1 - hoursToTaper));
    }
}
