package wayside.sizing.recharge;

import java.util.ArrayList;
import java.util.List;
import wayside.sizing.trace.Caution;
import wayside.sizing.trace.CautionCode;
import wayside.sizing.trace.Severity;

/** What whoever recharges a bank must know. */
public final class RechargeCautions {
    private RechargeCautions() {}

    public static List<Caution> of(RechargeQuestion question) {
        List<Caution> cautions = new ArrayList<>();
        if (question.bank().data().chemistry().isLeadAcid()) {
            cautions.add(Caution.commonPractice(Severity.DANGER, CautionCode.LEAD_ACID_VENTILATION));
            cautions.add(Caution.commonPractice(Severity.NOTE, CautionCode.PARTIAL_RECHARGE));
        } else {
            cautions.add(Caution.commonPractice(Severity.WARNING, CautionCode.COLD_CHARGING));
        }
        if (question.brief().system().alternatorA() > 0) {
            cautions.add(Caution.commonPractice(Severity.WARNING, CautionCode.ALTERNATOR_RATING));
        }
        return cautions;
    }
}
