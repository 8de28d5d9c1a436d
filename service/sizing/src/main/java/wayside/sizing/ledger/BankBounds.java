package wayside.sizing.ledger;

import java.util.OptionalDouble;

/**
 * What the maker of a bank says that it bears, where its chemistry's rates do not decide.
 *
 * @param chargeW into it at most [W]
 * @param dischargeW out of it at most [W]
 */
public record BankBounds(OptionalDouble chargeW, OptionalDouble dischargeW) {
    public static final BankBounds NONE = new BankBounds(OptionalDouble.empty(), OptionalDouble.empty());

    /**
     * Of currents.
     *
     * @param chargeA into it at most [A], at
     * @param chargingV [V]
     * @param dischargeA out of it at most [A], at
     * @param lowestV [V]
     */
    public static BankBounds of(OptionalDouble chargeA, double chargingV, OptionalDouble dischargeA, double lowestV) {
        return new BankBounds(times(chargeA, chargingV), times(dischargeA, lowestV));
    }

    private static OptionalDouble times(OptionalDouble amperes, double volts) {
        return amperes.isPresent() ? OptionalDouble.of(amperes.getAsDouble() * volts) : OptionalDouble.empty();
    }

    /** A bank never takes more than its chemistry does, whatever its maker allows [W]. */
    double chargeW(double ofItsChemistryW) {
        return Math.min(ofItsChemistryW, chargeW.orElse(ofItsChemistryW));
    }

    double dischargeW(double ofItsChemistryW) {
        return dischargeW.orElse(ofItsChemistryW);
    }
}
