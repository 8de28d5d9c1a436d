package wayside.sizing.brief;

import java.util.OptionalDouble;

/**
 * Air temperature of a month.
 *
 * @param meanC mean over the day [C]
 * @param dailySwingC difference between the day's highest and lowest [K], 0 or more; from the month's clearness if absent
 */
public record Ambient(double meanC, OptionalDouble dailySwingC) {
    public Ambient(double meanC, double dailySwingC) {
        this(meanC, OptionalDouble.of(dailySwingC));
    }
}
