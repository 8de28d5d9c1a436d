package wayside.sizing.laws;

import java.util.OptionalDouble;
import wayside.sizing.brief.BankRates;
import wayside.sizing.storage.BatteryBank;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Expression;
import wayside.sizing.trace.Unit;

/**
 * What a bank bears [A]: its maker's figure where it was given, else {@code I_max = r C}, r [1/h] its chemistry's rate, C [Ah]
 * its rated capacity.
 */
final class BankLimits {
    private static final Expression LIMIT = Expression.definition("I_max = r C");

    /** Where only the maker's figure for hours is known, a start gets as much more as the chemistry's rates have it. */
    private static final Expression IN_PROPORTION = Expression.commonPractice("I_peak = I_max r_p / r");

    private static final String FOR_A_START = "current that the bank gives for a start";

    private final BatteryBank bank;
    private final BankRates rates;

    BankLimits(BatteryBank bank, BankRates rates) {
        this.bank = bank;
        this.rates = rates;
    }

    Derived forHoursA() {
        return limit(
                "current that the bank gives for hours",
                rates.maximumDischargeA(),
                "maximumDischargeA",
                bank.data().maximumDischargeRate());
    }

    /** Never below what it gives for hours. */
    Derived forAStartA() {
        Derived hours = forHoursA();
        if (rates.peakDischargeA().isPresent() || growForHours()) {
            Derived start = limit(
                    FOR_A_START,
                    rates.peakDischargeA(),
                    "peakDischargeA",
                    bank.data().peakDischargeRate());
            return start.value() >= hours.value() ? start : hours;
        }
        return IN_PROPORTION.value(
                FOR_A_START,
                Unit.AMPERE,
                hours.as("I_max"),
                bank.data().peakDischargeRate().as("r_p"),
                bank.data().maximumDischargeRate().as("r"));
    }

    Derived chargedA() {
        return limit(
                "current that the bank takes at most",
                rates.maximumChargeA(),
                "maximumChargeA",
                bank.data().maximumChargeRate().high());
    }

    /** Whether a larger bank of the same kind would give more for hours. */
    boolean growForHours() {
        return rates.maximumDischargeA().isEmpty();
    }

    boolean growForAStart() {
        return rates.peakDischargeA().isEmpty() && growForHours();
    }

    private Derived limit(String label, OptionalDouble given, String field, Derived rate) {
        return given.isPresent()
                ? Derived.given(label, given.getAsDouble(), Unit.AMPERE, rates.at(field))
                : LIMIT.value(
                        label,
                        Unit.AMPERE,
                        rate.as("r"),
                        bank.nominalCapacityAh().as("C"));
    }
}
