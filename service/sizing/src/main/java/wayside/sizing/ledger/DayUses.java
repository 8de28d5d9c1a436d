package wayside.sizing.ledger;

import wayside.sizing.trace.Unit;

/** What a day's loads take, what must not stop apart from what may. */
public final class DayUses {
    final HourlyUses essential;
    final HourlyUses other;
    final double[] essentialW;
    final double[] otherW;
    final double loadsWh;
    final double inverterWh;
    final double standbyWh;

    /**
     * A day's uses.
     *
     * @param essential what must not stop: loads, their part of the inverter, standby
     * @param other what may stop
     */
    public DayUses(HourlyUses essential, HourlyUses other) {
        this.essential = essential;
        this.other = other;
        essentialW = essential.sumW();
        otherW = other.sumW();
        loadsWh = essential.loadsWh() + other.loadsWh();
        inverterWh = essential.inverterWh() + other.inverterWh();
        standbyWh = essential.standbyWh() + other.standbyWh();
    }

    public HourlyUses essential() {
        return essential;
    }

    public HourlyUses other() {
        return other;
    }

    /** All that the day takes out of the bus [Wh]. */
    public double wantedWh() {
        return loadsWh + inverterWh + standbyWh;
    }

    /**
     * Somewhere between two days.
     *
     * @param share 0 for this day, 1 for the next
     */
    public DayUses towards(DayUses next, double share) {
        return new DayUses(blend(essential, next.essential, share), blend(other, next.other, share));
    }

    private static HourlyUses blend(HourlyUses a, HourlyUses b, double share) {
        return new HourlyUses(
                blend(a.loadsW, b.loadsW, share),
                blend(a.inverterW, b.inverterW, share),
                blend(a.standbyW, b.standbyW, share));
    }

    private static double[] blend(double[] a, double[] b, double share) {
        double[] result = new double[Unit.HOURS_PER_DAY];
        for (int hour = 0; hour < result.length; hour++) {
            result[hour] = a[hour] + share * (b[hour] - a[hour]);
        }
        return result;
    }
}
