package wayside.sizing.demand;

import wayside.sizing.brief.Load;
import wayside.sizing.brief.Window;
import wayside.sizing.trace.Unit;

/** How a load's energy of a day falls on its 24 hours: into its windows, or evenly. */
public final class HourlyShares {
    private HourlyShares() {}

    /** Share of the day's energy in each local hour; sums to 1. */
    public static double[] of(Load load) {
        double[] shares = new double[Unit.HOURS_PER_DAY];
        int total = load.windows().stream().mapToInt(Window::minutes).sum();
        for (int hour = 0; hour < Unit.HOURS_PER_DAY; hour++) {
            shares[hour] = total == 0 ? 1.0 / Unit.HOURS_PER_DAY : (double) minutes(load, hour) / total;
        }
        return shares;
    }

    private static int minutes(Load load, int hour) {
        int minutes = 0;
        for (Window window : load.windows()) {
            minutes += window.minutesInHour(hour);
        }
        return minutes;
    }
}
