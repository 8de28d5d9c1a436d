package wayside.sizing.brief;

/**
 * Air temperature of a month.
 *
 * @param meanC mean over the day [C]
 * @param dailySwingC difference between the day's highest and lowest [K], 0 or more
 */
public record Ambient(double meanC, double dailySwingC) {}
