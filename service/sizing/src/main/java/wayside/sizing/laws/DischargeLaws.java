package wayside.sizing.laws;

import java.util.ArrayList;
import java.util.List;
import wayside.sizing.budget.EnergyBudget;
import wayside.sizing.inverter.InverterLoss;
import wayside.sizing.inverter.InverterRating;
import wayside.sizing.storage.BatteryBank;
import wayside.sizing.system.BankDraw;
import wayside.sizing.trace.Caution;
import wayside.sizing.trace.CautionCode;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Expression;
import wayside.sizing.trace.LawCode;
import wayside.sizing.trace.Message;
import wayside.sizing.trace.Parameter;
import wayside.sizing.trace.Severity;
import wayside.sizing.trace.ShortfallCode;
import wayside.sizing.trace.Unit;

/**
 * How hard a bank may be drawn on: for hours, {@code (P_dc + P_in) / V_low <= r C}, and for the seconds of a start likewise with
 * what starts. P_dc and P_in [W] are what may run together and what the inverter takes for it, V_low [V] the bank's lowest
 * voltage under load, r [1/h] the chemistry's rate, C [Ah] the rated capacity. Common practice, no source: the rates are those of
 * the table of chemistries.
 */
final class DischargeLaws {
    private static final Expression CURRENT = Expression.definition("I = P / V_low");
    private static final Expression NEEDED = Expression.definition("C = I / r");
    private static final Expression SIDE_BY_SIDE = Expression.definition("n = ceil(I / I_1)");
    private static final Expression USABLE = Expression.commonPractice("P = P_r I_max / I_r");

    private final BatteryBank bank;
    private final BankLimits limits;
    private final EnergyBudget budget;

    DischargeLaws(BatteryBank bank, BankLimits limits, EnergyBudget budget) {
        this.bank = bank;
        this.limits = limits;
        this.budget = budget;
    }

    List<Law> all() {
        List<Law> laws = new ArrayList<>();
        laws.add(forHours());
        laws.add(forASecond());
        return laws;
    }

    private Law forHours() {
        Derived asked = current("everything that may run together", BankDraw.peakW(budget));
        Derived rate = bank.data().maximumDischargeRate();
        Derived allowed = limits.forHoursA();
        Message mend = Message.of(
                ShortfallCode.DRAWN_TOO_HARD, Parameter.number("asked", asked), Parameter.number("allowed", allowed));
        Law law = Law.of(LawCode.DISCHARGE_CURRENT, asked, allowed)
                .orElse(limits.growForHours() ? withCapacity(mend, asked, rate) : withCount(mend, asked, allowed));
        return budget.inverterRating()
                .filter(rating -> law.verdict() == Law.Verdict.HOLDS)
                .map(rating -> withWhatTheBankFeeds(law, rating, allowed))
                .orElse(law);
    }

    /** An inverter that could draw more than the bank gives is no fault while the loads do not ask for it. */
    private Law withWhatTheBankFeeds(Law law, InverterRating rating, Derived allowed) {
        InverterLoss loss = budget.inverterLoss().orElseThrow();
        Derived full = current("the inverter at its rating", loss.fullBatteryPowerW(rating));
        if (full.value() <= allowed.value()) {
            return law;
        }
        Derived usable = USABLE.value(
                "inverter: power that the bank can feed",
                Unit.WATT,
                rating.continuousW().as("P_r"),
                allowed.as("I_max"),
                full.as("I_r"));
        return law.with(Caution.commonPractice(
                Severity.WARNING,
                CautionCode.INVERTER_BEYOND_BANK,
                Parameter.number("continuous", rating.continuousW()),
                Parameter.number("usable", usable)));
    }

    private Law forASecond() {
        Derived asked = current("the hardest start, all else running", BankDraw.startW(budget));
        Derived rate = bank.data().peakDischargeRate();
        Derived allowed = limits.forAStartA();
        Message mend = Message.of(
                ShortfallCode.STARTED_TOO_HARD,
                Parameter.number("asked", asked),
                Parameter.number("allowed", allowed),
                Parameter.number("seconds", bank.data().peakDischargeSeconds().value(), Unit.SECOND));
        return Law.of(LawCode.START_CURRENT, asked, allowed)
                .orElse(limits.growForAStart() ? withCapacity(mend, asked, rate) : withCount(mend, asked, allowed));
    }

    /** The maker's figure is of the whole bank, whatever its size: what does is more of them, each of which gives as much. */
    private static Message withCount(Message mend, Derived asked, Derived allowed) {
        Derived count = SIDE_BY_SIDE.value(
                asked.label() + ": banks that give it", Unit.COUNT, asked.as("I"), allowed.as("I_1"));
        return mend.with(Parameter.number("count", count));
    }

    private static Message withCapacity(Message mend, Derived asked, Derived rate) {
        Derived capacity =
                NEEDED.value(asked.label() + ": capacity that gives it", Unit.AMPERE_HOUR, asked.as("I"), rate.as("r"));
        return mend.with(Parameter.number("capacity", capacity));
    }

    private Derived current(String what, Derived powerW) {
        return CURRENT.value(
                "current out of the bank, " + what,
                Unit.AMPERE,
                powerW.as("P"),
                bank.lowestVoltageV().as("V_low"));
    }
}
