package wayside.sizing.brief;

import java.util.OptionalDouble;

/**
 * What is known of a bank beside its size: what its maker says that the whole of it bears, and its age. What is left open follows
 * from its chemistry.
 *
 * @param at where it was given
 * @param maximumDischargeA for hours [A]
 * @param peakDischargeA for the seconds of a start [A]
 * @param maximumChargeA into it [A]
 * @param shortCircuitA that a short at its terminals draws [A]
 * @param healthShare what age has left of its rated energy [share]
 */
public record BankRates(
        At at,
        OptionalDouble maximumDischargeA,
        OptionalDouble peakDischargeA,
        OptionalDouble maximumChargeA,
        OptionalDouble shortCircuitA,
        OptionalDouble healthShare)
        implements Placed {
    /** Nothing is said; it would stand there. */
    public static BankRates open(At at) {
        OptionalDouble open = OptionalDouble.empty();
        return new BankRates(at, open, open, open, open, open);
    }
}
