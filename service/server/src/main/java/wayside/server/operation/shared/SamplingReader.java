package wayside.server.operation.shared;

import org.jspecify.annotations.Nullable;
import wayside.sizing.brief.At;
import wayside.sizing.brief.DaySpread;
import wayside.sizing.brief.Sampling;
import wayside.sizing.brief.YearReading;

/** How many runs a trip is simulated in, and in what weather. */
public final class SamplingReader {
    private SamplingReader() {}

    public static Sampling read(
            At at,
            @Nullable Integer runs,
            @Nullable Integer seed,
            @Nullable Double skyUncertainty,
            @Nullable Double spreadUncertainty,
            @Nullable DaySpreadCode daySpread,
            @Nullable YearReadingCode yearReading) {
        return new Sampling(
                at,
                Given.whole(runs),
                Given.seed(seed),
                Given.number(skyUncertainty),
                Given.number(spreadUncertainty),
                Given.map(daySpread, code -> DaySpread.valueOf(code.name())),
                Given.map(yearReading, code -> YearReading.valueOf(code.name())));
    }
}
