package wayside.sizing.ledger;

import wayside.sizing.trace.Unit;

/** What one load of a stay wants of the battery, by local hour of a day. */
public final class LoadHours {
    final boolean essential;
    final double[] wantedW;
    /** The hours in which it wants anything, a bit each. */
    final int hours;

    final double wantedWh;

    /**
     * A load.
     *
     * @param essential whether the trip fails when it goes short
     * @param wantedW by local hour [W]
     */
    public LoadHours(boolean essential, double[] wantedW) {
        this.essential = essential;
        this.wantedW = wantedW.clone();
        int bits = 0;
        for (int hour = 0; hour < Unit.HOURS_PER_DAY; hour++) {
            bits |= wantedW[hour] > 0 ? 1 << hour : 0;
        }
        hours = bits;
        wantedWh = HourlyUses.sum(wantedW);
    }
}
