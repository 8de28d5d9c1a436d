package wayside.sizing.ledger;

import java.util.Arrays;
import wayside.sizing.trace.Unit;

/** Where power that leaves the bus goes, by local hour of a day. */
public final class HourlyUses {
    final double[] loadsW;
    final double[] inverterW;
    final double[] standbyW;

    /**
     * The uses of a day.
     *
     * @param loadsW at the loads' plugs [W]
     * @param inverterW lost in the inverter [W]
     * @param standbyW outlets, monitor, alarms [W]
     */
    public HourlyUses(double[] loadsW, double[] inverterW, double[] standbyW) {
        this.loadsW = loadsW.clone();
        this.inverterW = inverterW.clone();
        this.standbyW = standbyW.clone();
    }

    /** A steady draw of loads alone [W]. */
    public static HourlyUses steady(double loadW) {
        double[] loads = new double[Unit.HOURS_PER_DAY];
        Arrays.fill(loads, loadW);
        return new HourlyUses(loads, new double[Unit.HOURS_PER_DAY], new double[Unit.HOURS_PER_DAY]);
    }

    /** The loads of a day [Wh]. */
    public double loadsWh() {
        return sum(loadsW);
    }

    public double inverterWh() {
        return sum(inverterW);
    }

    public double standbyWh() {
        return sum(standbyW);
    }

    double[] sumW() {
        double[] sum = new double[Unit.HOURS_PER_DAY];
        for (int hour = 0; hour < Unit.HOURS_PER_DAY; hour++) {
            sum[hour] = loadsW[hour] + inverterW[hour] + standbyW[hour];
        }
        return sum;
    }

    static double sum(double[] values) {
        double sum = 0;
        for (double value : values) {
            sum += value;
        }
        return sum;
    }
}
