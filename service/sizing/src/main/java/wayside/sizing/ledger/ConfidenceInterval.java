package wayside.sizing.ledger;

import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Expression;
import wayside.sizing.trace.Source;
import wayside.sizing.trace.Unit;

/**
 * The 95 % confidence interval of a share that was counted in a number of runs: {@code (p + z^2/2N -+ z sqrt(p (1 - p) / N +
 * z^2 / 4N^2)) / (1 + z^2 / N)}, p [share], N [1] runs, z = 1.96. It is an interval of the draw: it knows nothing of what the
 * model does not know.
 *
 * <p>Source: E. B. Wilson, Probable inference, the law of succession, and statistical inference, Journal of the American
 * Statistical Association 22 (1927) 209-212.
 */
public record ConfidenceInterval(Derived low, Derived high) {
    private static final double Z = 1.959963984540054;
    private static final Source WILSON = Source.paper(
            "E. B. Wilson, Probable inference, the law of succession, and statistical inference, Journal of the American"
                    + " Statistical Association 22 (1927)",
            "score interval");
    private static final Expression LOW = Expression.of(
                    "l = (p + z z / (2 N) - z sqrt(p (1 - p) / N + z z / (4 N N))) / (1 + z z / N)", WILSON)
            .with("z", Z, Unit.COUNT);
    private static final Expression HIGH = Expression.of(
                    "h = (p + z z / (2 N) + z sqrt(p (1 - p) / N + z z / (4 N N))) / (1 + z z / N)", WILSON)
            .with("z", Z, Unit.COUNT);
    /** At the ends the formula gives 0 and 1 but for rounding. */
    private static final Expression END = Expression.of("e = p", WILSON);

    /**
     * @param share p, from 0 to 1
     * @param runs N, above 0
     */
    public static ConfidenceInterval of(Derived share, Derived runs) {
        String low = share.label() + ", low end";
        String high = share.label() + ", high end";
        return new ConfidenceInterval(
                share.value() == 0
                        ? END.value(low, Unit.SHARE, share.as("p"))
                        : LOW.value(low, Unit.SHARE, share.as("p"), runs.as("N")),
                share.value() == 1
                        ? END.value(high, Unit.SHARE, share.as("p"))
                        : HIGH.value(high, Unit.SHARE, share.as("p"), runs.as("N")));
    }
}
