package wayside.sizing.demand;

import wayside.sizing.brief.Load;
import wayside.sizing.brief.Window;

/** How a load's energy of a day falls on its 24 hours: into its windows, or evenly. */
public final class HourlyShares {
    public static final int HOURS = 24;

    private HourlyShares() {}

    /** Share of the day's energy in each local hour; sums to 1. */
    public static double[] of(Load load) {
        double[] shares = new double[HOURS];
        int total = load.windows().stream().mapToInt(Window::minutes).sum();
        for (int hour = 0; hour < HOURS; hour++) {
            shares[hour] = total == 0 ? 1.0 / HOURS : (double) minutes(load, hour) / total;
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
