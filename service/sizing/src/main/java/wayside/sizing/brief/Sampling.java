package wayside.sizing.brief;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * How often a trip is lived, and in what weathers.
 *
 * @param runs how often
 * @param seed of the weather
 * @param skyUncertainty standard deviation of the factor on the month's mean that stands for the year and for what is not known
 *     of the place [share]; by where the sky comes from if absent
 * @param spreadUncertainty standard deviation of the factor on the spread of the days [share]
 * @param daySpread whose spread that is; the place's own if absent
 * @param yearReading what is read from a typical year, where there is one; its hours if absent
 */
public record Sampling(
        OptionalInt runs,
        long seed,
        OptionalDouble skyUncertainty,
        OptionalDouble spreadUncertainty,
        Optional<DaySpread> daySpread,
        Optional<YearReading> yearReading) {
    public static final Sampling OPEN = new Sampling(
            OptionalInt.empty(), 0, OptionalDouble.empty(), OptionalDouble.empty(), Optional.empty(), Optional.empty());

    /** The same, with another reading of the typical year. */
    public Sampling reading(YearReading newReading) {
        return new Sampling(runs, seed, skyUncertainty, spreadUncertainty, daySpread, Optional.of(newReading));
    }

    /** So many lives. */
    public static Sampling of(int runs, long seed) {
        return new Sampling(
                OptionalInt.of(runs),
                seed,
                OPEN.skyUncertainty,
                OPEN.spreadUncertainty,
                OPEN.daySpread,
                OPEN.yearReading);
    }
}
