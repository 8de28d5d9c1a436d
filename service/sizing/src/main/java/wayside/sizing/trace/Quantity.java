package wayside.sizing.trace;

/**
 * A finite number with its unit. A value that is not finite is a fault of ours, never of the brief, and is refused.
 *
 * @param value finite
 * @param unit from the closed list
 */
public record Quantity(double value, Unit unit) {
    public Quantity {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("A quantity in " + unit.symbol() + " must be finite, got " + value);
        }
    }

    public static Quantity of(double value, Unit unit) {
        return new Quantity(value, unit);
    }
}
