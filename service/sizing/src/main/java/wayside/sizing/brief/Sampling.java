package wayside.sizing.brief;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.OptionalLong;

/**
 * How many runs a trip is simulated in, and in what weather.
 *
 * @param at where it was given
 * @param runs how many
 * @param seed of the weather; 0 if absent
 * @param skyUncertainty standard deviation of the factor on the month's mean that stands for the year and for what is not known
 *     of the place [share]; by where the sky comes from if absent
 * @param spreadUncertainty standard deviation of the factor on the spread of the days [share]
 * @param daySpread whose spread that is; the place's own if absent
 * @param yearReading what is read from a typical year, where there is one; its hours if absent
 */
public record Sampling(
        At at,
        OptionalInt runs,
        OptionalLong seed,
        OptionalDouble skyUncertainty,
        OptionalDouble spreadUncertainty,
        Optional<DaySpread> daySpread,
        Optional<YearReading> yearReading)
        implements Placed {
    public static final Sampling OPEN = new Sampling(
            At.ROOT,
            OptionalInt.empty(),
            OptionalLong.empty(),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            Optional.empty(),
            Optional.empty());

    /** What decides the weather of every run. */
    public long weatherSeed() {
        return seed.orElse(0);
    }

    /** The same, with another reading of the typical year. */
    public Sampling reading(YearReading newReading) {
        return new Sampling(at, runs, seed, skyUncertainty, spreadUncertainty, daySpread, Optional.of(newReading));
    }

    /** So many runs. */
    public static Sampling of(int runs, long seed) {
        return new Sampling(
                At.ROOT,
                OptionalInt.of(runs),
                OptionalLong.of(seed),
                OPEN.skyUncertainty,
                OPEN.spreadUncertainty,
                OPEN.daySpread,
                OPEN.yearReading);
    }
}
