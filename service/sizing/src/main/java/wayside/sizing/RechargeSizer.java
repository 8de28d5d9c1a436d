package wayside.sizing;

import java.util.List;
import wayside.sizing.brief.RechargeBrief;
import wayside.sizing.recharge.Recharge;
import wayside.sizing.recharge.RechargeCautions;
import wayside.sizing.recharge.RechargeQuestion;
import wayside.sizing.trace.Answer;

/** How long a recharge takes, with all sources at once, against what the battery accepts. */
public final class RechargeSizer {
    private RechargeSizer() {}

    /** @param brief whose start lies below its end */
    public static Answer<Recharge> size(RechargeBrief brief) {
        RechargeQuestion question = RechargeQuestion.of(brief);
        Recharge recharge = Recharge.of(question);
        return new Answer<>(recharge, List.of(), RechargeCautions.of(question));
    }
}
