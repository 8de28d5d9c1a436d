package wayside.sizing.solar.sky;

/**
 * Diffuse share of the global irradiation from the clearness index.
 *
 * <p>Source: D. G. Erbs, S. A. Klein and J. A. Duffie, Estimation of the diffuse radiation fraction for hourly, daily and
 * monthly-average global radiation, Solar Energy 28 (1982) 293-302; Duffie &amp; Beckman, eq. 2.10.1, 2.11.1 and 2.12.1.
 */
public final class Erbs {
    /** Sunset hour angle that parts winter from the rest of the year: 81.4 degrees. */
    private static final double WINTER = Math.toRadians(81.4);

    private Erbs() {}

    /**
     * Diffuse share of an hour.
     *
     * @param kt clearness index of the hour, 0 or more
     * @return [share]
     */
    public static double hourly(double kt) {
        if (kt <= 0.22) {
            return 1 - 0.09 * kt;
        }
        if (kt <= 0.8) {
            return 0.9511 + kt * (-0.1604 + kt * (4.388 + kt * (-16.638 + kt * 12.336)));
        }
        return 0.165;
    }

    /**
     * Diffuse share of a day.
     *
     * @param kt clearness index of the day, 0 or more
     * @param ws sunset hour angle [rad]
     * @return [share]
     */
    public static double daily(double kt, double ws) {
        if (ws <= WINTER) {
            return kt < 0.715 ? 1 + kt * (-0.2727 + kt * (2.4495 + kt * (-11.9514 + kt * 9.3879))) : 0.143;
        }
        return kt < 0.722 ? 1 + kt * (0.2832 + kt * (-2.5557 + kt * 0.8448)) : 0.175;
    }

    /**
     * Diffuse share of a month's mean day. Valid for a clearness of 0.3 to 0.8; held at the ends beyond.
     *
     * @param kt mean clearness index of the month
     * @param ws sunset hour angle of its mean day [rad]
     * @return [share]
     */
    public static double monthly(double kt, double ws) {
        double k = Math.max(0.3, Math.min(0.8, kt));
        return ws <= WINTER
                ? 1.391 + k * (-3.560 + k * (4.189 - k * 2.137))
                : 1.311 + k * (-3.022 + k * (3.427 - k * 1.821));
    }
}
