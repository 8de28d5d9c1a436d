package wayside.sizing.ledger;

import wayside.sizing.brief.DaySpread;

/**
 * How far the sky of one run may lie from the expected one: log-normal factors of mean one, drawn once for the whole run.
 *
 * <p>{@code f = exp(s z - s^2 / 2)}, {@code s^2 = ln(1 + sd^2)}, z standard normal.
 *
 * @param ofMean standard deviation of the factor on the month's mean: the year's own scatter, and what is not known of the place
 *     [share]
 * @param ofSpread standard deviation of the factor on the day-to-day spread, likewise [share]; Bendt's own has none
 * @param daySpread whose spread the days have
 */
public record SkyScatter(double ofMean, double ofSpread, DaySpread daySpread) {
    /** Of the mean, when the customer gives the irradiation. */
    public static final double MEAN_GIVEN = 0.12;
    /** Of the mean, when the climatology stands for it. */
    public static final double MEAN_FROM_TABLE = 0.16;
    /** Of the spread, which always comes from a table. */
    public static final double SPREAD = 0.27;

    /** The place's own spread, the scatter as given. */
    public static SkyScatter of(double ofMean, double ofSpread) {
        return new SkyScatter(ofMean, ofSpread, DaySpread.PLACE);
    }

    double meanFactor(double z) {
        return factor(ofMean, z);
    }

    double spreadFactor(double z) {
        return factor(ofSpread, z);
    }

    static double factor(double deviation, double z) {
        double variance = Math.log1p(deviation * deviation);
        return Math.exp(Math.sqrt(variance) * z - variance / 2);
    }
}
