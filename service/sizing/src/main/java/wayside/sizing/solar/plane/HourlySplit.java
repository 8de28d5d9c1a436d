package wayside.sizing.solar.plane;

import wayside.sizing.trace.Unit;

/**
 * How the irradiation of a day spreads over its hours.
 *
 * <p>The published ratios are meant for the middle of an hour and their sums over the day miss one by up to 3 %. The filled
 * arrays are therefore scaled to sum to one, so that no energy is made or lost.
 */
public final class HourlySplit {
    /** Of the middle of each hour. Read only. */
    static final double[] COS_OMEGA = new double[Unit.HOURS_PER_DAY];

    static final double[] SIN_OMEGA = new double[Unit.HOURS_PER_DAY];

    static {
        for (int hour = 0; hour < Unit.HOURS_PER_DAY; hour++) {
            COS_OMEGA[hour] = Math.cos(SunGeometry.hourAngle(hour));
            SIN_OMEGA[hour] = Math.sin(SunGeometry.hourAngle(hour));
        }
    }

    private HourlySplit() {}

    /**
     * Hour's share of a day's global irradiation, as published, not scaled.
     *
     * <p>{@code rt = pi/24 (a + b cos w) (cos w - cos ws) / (sin ws - ws cos ws)}, {@code a = 0.409 + 0.5016 sin(ws - 60)},
     * {@code b = 0.6609 - 0.4767 sin(ws - 60)}, the 60 in degrees.
     *
     * <p>Source: M. Collares-Pereira and A. Rabl, Solar Energy 22 (1979) 155-164; Duffie &amp; Beckman, eq. 2.13.1 and 2.13.2.
     *
     * @param w hour angle of the middle of the hour [rad]
     * @param ws sunset hour angle [rad], 0 to pi
     * @return [share]; 0 at night
     */
    public static double globalShare(double w, double ws) {
        return diffuseShare(w, ws) * lean(Math.cos(w), Math.sin(ws - Math.PI / 3));
    }

    /** {@code a + b cos w}, which leans the global light towards noon. */
    private static double lean(double cosW, double sinOfWsLess60) {
        double a = 0.409 + 0.5016 * sinOfWsLess60;
        double b = 0.6609 - 0.4767 * sinOfWsLess60;
        return a + b * cosW;
    }

    /**
     * Hour's share of a day's diffuse irradiation, as published, not scaled.
     *
     * <p>{@code rd = pi/24 (cos w - cos ws) / (sin ws - ws cos ws)}.
     *
     * <p>Source: B. Y. H. Liu and R. C. Jordan, Solar Energy 4 (1960) 1-19; Duffie &amp; Beckman, eq. 2.13.4.
     *
     * @return [share]; 0 at night
     */
    public static double diffuseShare(double w, double ws) {
        return Math.abs(w) >= ws ? 0 : raw(Math.cos(w), Math.cos(ws), rawDivisor(ws));
    }

    private static double raw(double cosW, double cosWs, double divisor) {
        return Math.PI / Unit.HOURS_PER_DAY * (cosW - cosWs) / divisor;
    }

    private static double rawDivisor(double ws) {
        return Math.sin(ws) - ws * Math.cos(ws);
    }

    /** Fills the 24 global shares of a day so that they sum to one, or to zero when the sun doesn't rise. */
    public static void fillGlobal(double ws, double[] shares) {
        fillRaw(ws, shares);
        double sinOfWsLess60 = Math.sin(ws - Math.PI / 3);
        for (int hour = 0; hour < Unit.HOURS_PER_DAY; hour++) {
            // Not multiplied at night, where the lean may be negative.
            shares[hour] = shares[hour] > 0 ? shares[hour] * lean(COS_OMEGA[hour], sinOfWsLess60) : 0;
        }
        scaleToOne(ws, shares);
    }

    /** Fills the 24 diffuse shares of a day so that they sum to one, or to zero when the sun doesn't rise. */
    public static void fillDiffuse(double ws, double[] shares) {
        fillRaw(ws, shares);
        scaleToOne(ws, shares);
    }

    private static void fillRaw(double ws, double[] shares) {
        double cosWs = Math.cos(ws);
        double divisor = rawDivisor(ws);
        for (int hour = 0; hour < Unit.HOURS_PER_DAY; hour++) {
            shares[hour] = Math.abs(SunGeometry.hourAngle(hour)) >= ws ? 0 : raw(COS_OMEGA[hour], cosWs, divisor);
        }
    }

    /** A day too short to hold the middle of an hour goes to the two hours around noon. */
    private static void scaleToOne(double ws, double[] shares) {
        double sum = 0;
        for (int hour = 0; hour < Unit.HOURS_PER_DAY; hour++) {
            sum += shares[hour];
        }
        if (sum > 0) {
            for (int hour = 0; hour < Unit.HOURS_PER_DAY; hour++) {
                shares[hour] /= sum;
            }
        } else if (ws > 0) {
            shares[11] = 0.5;
            shares[12] = 0.5;
        }
    }
}
