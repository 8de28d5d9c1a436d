package wayside.sizing.brief;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Where the bank stands.
 *
 * @param at where it was given
 * @param offsetK how much warmer than the air it is there [K]; outside air if absent
 * @param lagHours how slowly it follows the air [h], 0 for at once; from its box, else a default, if absent
 * @param box what it weighs and stands in, which makes the lag
 */
public record BankPlacement(At at, OptionalDouble offsetK, OptionalDouble lagHours, Optional<BankBox> box)
        implements Placed {
    /** Outside, as far as anybody said. */
    public static final BankPlacement OPEN =
            new BankPlacement(At.ROOT, OptionalDouble.empty(), OptionalDouble.empty(), Optional.empty());

    /** Warmer than the air by so much [K]. */
    public static BankPlacement warmerBy(double offsetK) {
        return new BankPlacement(At.ROOT, OptionalDouble.of(offsetK), OptionalDouble.empty(), Optional.empty());
    }

    /** The same, following the air with another lag [h]. */
    public BankPlacement lagging(double newLagHours) {
        return new BankPlacement(at, offsetK, OptionalDouble.of(newLagHours), Optional.empty());
    }
}
