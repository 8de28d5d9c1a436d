package wayside.sizing.recharge;

import java.util.ArrayList;
import java.util.List;
import wayside.sizing.trace.Caution;
import wayside.sizing.trace.Severity;
import wayside.sizing.trace.Source;

/** What whoever recharges a bank must know. */
public final class RechargeCautions {
    private RechargeCautions() {}

    public static List<Caution> of(RechargeQuestion question) {
        List<Caution> cautions = new ArrayList<>();
        if (question.bank().data().chemistry().isLeadAcid()) {
            cautions.add(caution(
                    "lead-acid-ventilation",
                    Severity.DANGER,
                    "A lead-acid battery gives off hydrogen while it charges: vent its box to the outside and keep sparks"
                            + " away."));
            cautions.add(caution(
                    "partial-recharge",
                    Severity.NOTE,
                    "The last fifth takes most of the time. A lead-acid battery that never gets it wears out early."));
        } else {
            cautions.add(caution(
                    "cold-charging",
                    Severity.WARNING,
                    "A lithium battery charged below 0 C (32 F) is damaged for good. Its electronics must stop that."));
        }
        if (question.brief().system().alternatorA() > 0) {
            cautions.add(caution(
                    "alternator-heat",
                    Severity.WARNING,
                    "The alternator must stand this current hot and at idle: about half its label. Use a charger that limits"
                            + " it."));
        }
        return cautions;
    }

    private static Caution caution(String code, Severity severity, String text) {
        return new Caution(code, severity, text, Source.commonPractice());
    }
}
