package wayside.sizing.ledger;

/**
 * How much warmer one day is after another, in standard deviations of the month's days: {@code y_t = r y_(t-1) + sqrt(1 - r^2)
 * e_t}, independent of how clear the days are.
 *
 * <p>r = 0.70 is fitted on the daily means of 1,207 typical years (NREL TMY3 2008 and others), whose lags within a month are
 * 0.62, 0.25 and 0.07; the mean of k = 2, 3, 5, 7 and 10 days then scatters by 0.89, 0.81, 0.69, 0.60 and 0.49 of a day's.
 */
final class TemperatureChain {
    static final double DAY_TO_DAY = 0.70;

    private static final double FRESH = Math.sqrt(1 - DAY_TO_DAY * DAY_TO_DAY);

    private final RunRandom random;
    private double y;

    TemperatureChain(RunRandom random) {
        this.random = random;
        y = random.nextNormal();
    }

    /** The next day, standard normal. */
    double next() {
        double day = y;
        y = DAY_TO_DAY * y + FRESH * random.nextNormal();
        return day;
    }
}
