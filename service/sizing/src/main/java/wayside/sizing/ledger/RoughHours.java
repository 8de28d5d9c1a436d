package wayside.sizing.ledger;

import wayside.sizing.trace.Unit;

/**
 * How the hours of a day differ from a smooth day of the same light: each hour's share is multiplied by {@code exp(s x_h)}, x an
 * AR(1) along the day with r = 0.55 and unit variance, new each day; the shares are then scaled back, so that the day keeps its
 * light. Without it small banks are told too sure.
 *
 * <p>{@code s = 0.82 - k}, held between 0.12 and 0.46, k the day's own clearness: changeable days are rough, clear and overcast
 * ones less. Fitted on the hours of typical years (NREL TMY3 2008 and others); r published as 0.54, Graham &amp; Hollands, Solar
 * Energy 44 (1990), abstract.
 */
final class RoughHours {
    private static final double HOUR_TO_HOUR = 0.55;
    private static final double FRESH = Math.sqrt(1 - HOUR_TO_HOUR * HOUR_TO_HOUR);

    private final RunRandom random;
    private final double[] factors = new double[Unit.HOURS_PER_DAY];

    RoughHours(RunRandom random) {
        this.random = random;
    }

    /**
     * The factors of another day, not yet scaled back.
     *
     * @param k clearness of the day
     * @param from first hour with sun
     * @param until the hour after the last
     * @return by hour; valid until the next day is drawn
     */
    double[] next(double k, int from, int until) {
        double s = spread(k);
        double x = random.nextRoughlyNormal();
        for (int hour = from; hour < until; hour++) {
            factors[hour] = nearlyExp(s * x);
            x = HOUR_TO_HOUR * x + FRESH * random.nextRoughlyNormal();
        }
        return factors;
    }

    /** Pade's second quotient: within 0.1 % to 0.8 and within 2 % to 1.6, the farthest that is drawn; an exponential costs more than
     * all else of an hour. */
    static double nearlyExp(double y) {
        double above = 3 + y;
        double below = 3 - y;
        return (above * above + 3) / (below * below + 3);
    }

    /** s of a day. */
    static double spread(double k) {
        double s = 0.82 - k;
        return s < 0.12 ? 0.12 : s > 0.46 ? 0.46 : s;
    }
}
