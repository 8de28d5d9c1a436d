package wayside.sizing.ledger;

/**
 * How clear one day is after another, as shares of all days that are darker: a Gaussian chain,
 * {@code z_t = r z_(t-1) + sqrt(1 - r^2) e_t}, {@code u_t = Phi(z_t)}.
 *
 * <p>Source of r = 0.29: V. A. Graham, K. G. T. Hollands and T. E. Huget, A time series model for Kt with application to global
 * synthetic weather generation, Solar Energy 40 (1988) 83-92 (from memory); daily data of typical years give 0.24 to 0.27.
 */
final class DayChain {
    static final double DAY_TO_DAY = 0.29;

    private static final double FRESH = Math.sqrt(1 - DAY_TO_DAY * DAY_TO_DAY);

    private final RunRandom random;
    private double z;

    DayChain(RunRandom random) {
        this.random = random;
        z = random.nextNormal();
    }

    /** Share of all days that are darker than the next one, above 0 and below 1. */
    double next() {
        double share = Normal.cumulative(z);
        z = DAY_TO_DAY * z + FRESH * random.nextNormal();
        return share;
    }
}
