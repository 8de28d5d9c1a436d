package wayside.sizing.solar.sky;

import wayside.sizing.trace.Unit;

/** The air's temperature through a day. */
public final class AirTemperature {
    private static final double WARMEST_HOUR = 15;
    private static final double[] WAVE = new double[Unit.HOURS_PER_DAY];

    static {
        for (int hour = 0; hour < WAVE.length; hour++) {
            WAVE[hour] = Math.cos(2 * Math.PI * (hour + 0.5 - WARMEST_HOUR) / Unit.HOURS_PER_DAY) / 2;
        }
    }

    private AirTemperature() {}

    /**
     * A cosine about the mean, warmest at 15 h: {@code T = Tm + D / 2 cos(15 (t - 15))}.
     *
     * <p>Common practice, no source.
     *
     * @param meanC mean of the day [C]
     * @param dailySwingK between lowest and highest [K]
     * @param hour of solar time, 0 to 23
     * @return mean of the hour [C]
     */
    public static double hourC(double meanC, double dailySwingK, int hour) {
        return meanC + dailySwingK * WAVE[hour];
    }

    /**
     * All hours of a day.
     *
     * @param meanC mean of the day [C]
     * @param dailySwingK between lowest and highest [K]
     * @return mean of each hour [C]
     */
    public static double[] dayC(double meanC, double dailySwingK) {
        double[] airC = new double[WAVE.length];
        for (int hour = 0; hour < airC.length; hour++) {
            airC[hour] = hourC(meanC, dailySwingK, hour);
        }
        return airC;
    }
}
