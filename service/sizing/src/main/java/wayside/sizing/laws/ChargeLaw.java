package wayside.sizing.laws;

import java.util.List;
import java.util.Optional;
import wayside.sizing.brief.Chemistry;
import wayside.sizing.storage.BatteryBank;
import wayside.sizing.trace.Caution;
import wayside.sizing.trace.CautionCode;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Expression;
import wayside.sizing.trace.Input;
import wayside.sizing.trace.LawCode;
import wayside.sizing.trace.Message;
import wayside.sizing.trace.Parameter;
import wayside.sizing.trace.Severity;
import wayside.sizing.trace.ShortfallCode;
import wayside.sizing.trace.Source;
import wayside.sizing.trace.Unit;

/**
 * How hard a bank may be charged: sun and the larger of engine and hookup together, which do not run at once, at most
 * {@code r C} with r [1/h] the chemistry's highest rate and C [Ah] the rated capacity. Charge controllers can be set to less;
 * chargers on engine and hookup cannot be counted on for that. Common practice, no source.
 */
final class ChargeLaw {
    /** Flooded cells that get less than a tenth of their capacity never mix their acid. Common practice, no source. */
    private static final double GENTLE_RATE = 0.1;

    private static final Expression OTHERS = Expression.commonPractice("I_other = max(0, max(I_engine, I_hookup))");
    private static final Expression TOGETHER = Expression.commonPractice("I = I_sun + I_other");
    private static final Expression SETTING = Expression.definition("I_set = floor(I_max - I_other)");

    private final BatteryBank bank;
    private final BankLimits limits;
    private final ChargingCurrents currents;

    ChargeLaw(BatteryBank bank, BankLimits limits, ChargingCurrents currents) {
        this.bank = bank;
        this.limits = limits;
        this.currents = currents;
    }

    Law law() {
        Derived others = OTHERS.value(
                "current of engine or hookup, the larger",
                Unit.AMPERE,
                List.of(
                        or(currents.engineA(), "engine").as("I_engine"),
                        or(currents.hookupA(), "hookup").as("I_hookup")));
        Derived sun = or(currents.sunA(), "sun");
        Derived together = TOGETHER.value(
                "current into the bank, chargers that run together",
                Unit.AMPERE,
                List.of(sun.as("I_sun"), others.as("I_other")));
        Derived allowed = limits.chargedA();
        Law law = Law.of(LawCode.CHARGE_CURRENT, together, allowed);
        if (together.value() > allowed.value()) {
            return tooHard(law, others, allowed);
        }
        return tooGently(together) ? law.with(gentle(together)) : law;
    }

    private Law tooHard(Law law, Derived others, Derived allowed) {
        Input[] left = {allowed.as("I_max"), others.as("I_other")};
        Derived setting = SETTING.value("setting of the charge controllers, together", Unit.AMPERE, left);
        if (setting.value() >= 1) {
            return law.with(Caution.commonPractice(
                    Severity.WARNING,
                    CautionCode.LIMIT_THE_CONTROLLERS,
                    Parameter.number("setting", setting),
                    Parameter.number("asked", law.asked()),
                    Parameter.number("allowed", allowed)));
        }
        return law.orElse(Message.of(
                ShortfallCode.CHARGED_TOO_HARD,
                Parameter.number("asked", law.asked()),
                Parameter.number("allowed", allowed)));
    }

    private boolean tooGently(Derived together) {
        return bank.data().chemistry() == Chemistry.FLOODED
                && together.value() > 0
                && together.value() < GENTLE_RATE * bank.nominalCapacityAh().value();
    }

    private Caution gentle(Derived together) {
        return Caution.commonPractice(
                Severity.WARNING,
                CautionCode.CHARGED_TOO_GENTLY,
                Parameter.number("asked", together),
                Parameter.number("least", GENTLE_RATE * bank.nominalCapacityAh().value(), Unit.AMPERE));
    }

    private static Derived or(Optional<Derived> current, String source) {
        return current.orElseGet(() -> Derived.convention(
                source + ": charging current", 0, Unit.AMPERE, "None charges the bank", Source.definition()));
    }
}
