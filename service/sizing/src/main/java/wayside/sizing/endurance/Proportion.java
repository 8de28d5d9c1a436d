package wayside.sizing.endurance;

/**
 * A share of runs, with the range that the true chance lies in with 95 % confidence.
 *
 * <p>Source: E. B. Wilson, Probable inference, the law of succession, and statistical inference, Journal of the American
 * Statistical Association 22 (1927) 209-212: {@code (p + z2/2n -+ z sqrt(p (1 - p) / n + z2 / 4n2)) / (1 + z2 / n)}, z = 1.96.
 *
 * @param value share of the runs
 * @param low end of the range
 * @param high end of the range
 */
public record Proportion(double value, double low, double high) {
    private static final double Z = 1.959963984540054;

    /** Of so many runs, so many. */
    public static Proportion of(int hits, int runs) {
        double p = (double) hits / runs;
        double z2 = Z * Z;
        double centre = p + z2 / (2 * runs);
        double half = Z * Math.sqrt(p * (1 - p) / runs + z2 / (4.0 * runs * runs));
        double whole = 1 + z2 / runs;
        // At the ends the formula gives 0 and 1 but for rounding.
        double low = hits == 0 ? 0 : (centre - half) / whole;
        double high = hits == runs ? 1 : (centre + half) / whole;
        return new Proportion(p, low, high);
    }
}
