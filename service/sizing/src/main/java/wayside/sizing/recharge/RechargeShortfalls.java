package wayside.sizing.recharge;

import java.util.ArrayList;
import java.util.List;
import wayside.sizing.charging.ChargerNeed;
import wayside.sizing.storage.ChargeWindow;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Message;
import wayside.sizing.trace.Shortfall;
import wayside.sizing.trace.ShortfallCode;
import wayside.sizing.trace.Source;
import wayside.sizing.trace.Unit;

/** Why a recharge would never end. */
final class RechargeShortfalls {
    private RechargeShortfalls() {}

    static List<Shortfall> of(RechargeQuestion question) {
        List<Shortfall> shortfalls = new ArrayList<>();
        if (!ChargeWindow.mayCharge(question.bank().data(), question.ambientC().value())) {
            shortfalls.add(temperature(question.bank(), question.ambientC()));
        }
        if (question.time().sourceW().value() <= 0) {
            shortfalls.add(power(question.time().sourceW()));
        }
        return shortfalls;
    }

    private static Shortfall temperature(ChargerNeed bank, Derived ambient) {
        boolean cold = ambient.value() < bank.data().lowestChargeC().value();
        return new Shortfall(
                Message.of(cold ? ShortfallCode.TOO_COLD_TO_CHARGE : ShortfallCode.TOO_HOT_TO_CHARGE),
                cold ? bank.data().lowestChargeC() : bank.data().highestChargeC(),
                ambient);
    }

    private static Shortfall power(Derived sourceW) {
        Derived some = Derived.convention(
                "power that a charge needs",
                1,
                Unit.WATT,
                "More than nothing must be left for the battery",
                Source.definition());
        return new Shortfall(Message.of(ShortfallCode.NO_POWER), some, sourceW);
    }
}
