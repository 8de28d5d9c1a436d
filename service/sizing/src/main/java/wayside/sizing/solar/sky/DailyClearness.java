package wayside.sizing.solar.sky;

/**
 * How the clearness of single days spreads about the month's mean.
 *
 * <p>{@code F(K) = (e^(g Kmin) - e^(g K)) / (e^(g Kmin) - e^(g Kmax))}, Kmin 0.05,
 * {@code Kmax = 0.6313 + 0.267 Km - 11.9 (Km - 0.75)^8}, {@code xi = (Kmax - Kmin) / (Kmax - Km)},
 * {@code g = -1.498 + (1.184 xi - 27.182 e^(-1.5 xi)) / (Kmax - Kmin)}.
 *
 * <p>Source: P. Bendt, M. Collares-Pereira and A. Rabl, The frequency distribution of daily insolation values, Solar Energy 27
 * (1981) 1-5; Kmax by K. G. T. Hollands and R. G. Huget, Solar Energy 30 (1983) 195-209; g by M. E. Herzog 1985; all as in
 * Duffie &amp; Beckman, eq. 2.9.4 to 2.9.7.
 *
 * <p>Differs from the source: the small error of the mean is added back; deviations are scaled to the place's own spread, for
 * Bendt's own is too dark on single days, in the tropics on whole weeks; a mean outside 0.25 to 0.75, where the formulas don't
 * hold, takes the shape of the nearest one and stays between zero and one.
 */
public final class DailyClearness {
    private static final double K_MIN = 0.05;
    private static final double LOWEST_MEAN = 0.25;
    private static final double HIGHEST_MEAN = 0.75;
    /** Below this |g (Kmax - Kmin)| the exponentials are a straight line to 1e-7. */
    private static final double STRAIGHT = 1e-6;

    private static final double BRIGHTEST = 0.9;

    private final double mean;
    private final double kMax;
    private final double g;
    /** {@code e^(g (Kmax - Kmin)) - 1}. */
    private final double stretch;

    private final double ownMean;
    private final double ownSpread;
    private final double scale;

    private DailyClearness(double mean, double spread) {
        double shape = Math.max(LOWEST_MEAN, Math.min(HIGHEST_MEAN, mean));
        this.mean = mean;
        kMax = highest(shape);
        g = exponent(shape, kMax);
        stretch = Math.expm1(g * (kMax - K_MIN));
        ownMean = publishedMean();
        ownSpread = publishedSpread();
        scale = Math.max(0, Math.min(Math.min(1, spread / ownSpread), room()));
    }

    /**
     * The distribution, its deviations scaled to a spread, never beyond Bendt's own.
     *
     * @param mean clearness of the month, 0 to 1
     * @param spread standard deviation of the daily clearness in the month, 0 or more
     */
    public static DailyClearness scaled(double mean, double spread) {
        return new DailyClearness(mean, spread);
    }

    /** The distribution as published. */
    public static DailyClearness unscaled(double mean) {
        return new DailyClearness(mean, Double.POSITIVE_INFINITY);
    }

    /**
     * Clearness of the day that a share u of all days falls short of.
     *
     * @param u 0 to 1
     * @return K, whose mean over all u is the month's mean
     */
    public double quantile(double u) {
        return mean + scale * (published(u) - ownMean);
    }

    /** Standard deviation of {@link #quantile}. */
    public double spread() {
        return scale * ownSpread;
    }

    /** F of a clearness, unscaled and with the published mean: for comparison with the source. */
    double cumulative(double k) {
        double length = kMax - K_MIN;
        return Math.abs(g * length) < STRAIGHT
                ? (k - K_MIN) / length
                : Math.expm1(g * (k - K_MIN)) / Math.expm1(g * length);
    }

    /** g of the source. */
    double exponent() {
        return g;
    }

    private double published(double u) {
        double length = kMax - K_MIN;
        return Math.abs(stretch) < STRAIGHT ? K_MIN + u * length : K_MIN + Math.log(1 + u * stretch) / g;
    }

    /** How far the deviations may be stretched before a day leaves 0 or {@link #BRIGHTEST}. */
    private double room() {
        double down = mean / (ownMean - K_MIN);
        double up = mean < HIGHEST_MEAN ? 1 : (BRIGHTEST - mean) / (kMax - ownMean);
        return Math.min(down, up);
    }

    private static double highest(double km) {
        double square = (km - 0.75) * (km - 0.75);
        return 0.6313 + 0.267 * km - 11.9 * square * square * square * square;
    }

    private static double exponent(double km, double kMax) {
        double xi = (kMax - K_MIN) / (kMax - km);
        return -1.498 + (1.184 * xi - 27.182 * Math.exp(-1.5 * xi)) / (kMax - K_MIN);
    }

    private double publishedMean() {
        double length = kMax - K_MIN;
        double x = g * length;
        // The series of the same expression, where it would be a difference of two infinities.
        return Math.abs(x) < 1e-3 ? K_MIN + length * (0.5 + x / 12) : K_MIN + length * (1 + stretch) / stretch - 1 / g;
    }

    private double publishedSpread() {
        double length = kMax - K_MIN;
        double x = g * length;
        if (Math.abs(x) < 1e-2) {
            return length / Math.sqrt(12) * (1 - x * x / 40);
        }
        return Math.sqrt(1 / (g * g) - length * length * (1 + stretch) / (stretch * stretch));
    }
}
