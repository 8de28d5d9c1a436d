package wayside.sizing.brief;

import java.util.OptionalDouble;

/**
 * Where the bank stands.
 *
 * @param at where it was given
 * @param offsetK how much warmer than the air it is there [K]; outside air if absent
 */
public record BankPlacement(At at, OptionalDouble offsetK) implements Placed {
    /** Outside, as far as anybody said. */
    public static final BankPlacement OPEN = new BankPlacement(At.ROOT, OptionalDouble.empty());

    /** Warmer than the air by so much [K]. */
    public static BankPlacement warmerBy(double offsetK) {
        return new BankPlacement(At.ROOT, OptionalDouble.of(offsetK));
    }
}
