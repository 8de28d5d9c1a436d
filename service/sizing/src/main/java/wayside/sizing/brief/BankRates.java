package wayside.sizing.brief;

import java.util.OptionalDouble;

/**
 * What the maker of a bank says that the whole of it bears; what is left open follows from its chemistry.
 *
 * @param at where it was given
 * @param maximumDischargeA for hours [A]
 * @param peakDischargeA for the seconds of a start [A]
 * @param maximumChargeA into it [A]
 * @param shortCircuitA that a short at its terminals draws [A]
 */
public record BankRates(
        At at,
        OptionalDouble maximumDischargeA,
        OptionalDouble peakDischargeA,
        OptionalDouble maximumChargeA,
        OptionalDouble shortCircuitA)
        implements Placed {
    /** Nothing is said; it would stand there. */
    public static BankRates open(At at) {
        OptionalDouble open = OptionalDouble.empty();
        return new BankRates(at, open, open, open, open);
    }
}
