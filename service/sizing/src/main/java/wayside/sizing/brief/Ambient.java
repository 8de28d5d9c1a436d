package wayside.sizing.brief;

import java.util.OptionalDouble;

/**
 * Air temperature of a month.
 *
 * @param at where it was given
 * @param meanC mean over the day [C]
 * @param dailySwingC difference between the day's highest and lowest [K], 0 or more; from the month's clearness if absent
 */
public record Ambient(At at, double meanC, OptionalDouble dailySwingC) implements Placed {
    public Ambient(double meanC, double dailySwingC) {
        this(At.ROOT, meanC, OptionalDouble.of(dailySwingC));
    }
}
