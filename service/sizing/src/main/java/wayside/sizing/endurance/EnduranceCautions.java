package wayside.sizing.endurance;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import wayside.sizing.laws.Laws;
import wayside.sizing.ledger.Outcome;
import wayside.sizing.solar.sky.SkyMonth;
import wayside.sizing.trace.Caution;
import wayside.sizing.trace.CautionCode;
import wayside.sizing.trace.Parameter;
import wayside.sizing.trace.Severity;
import wayside.sizing.trace.Unit;

/** What whoever trusts a simulated trip must know. */
public final class EnduranceCautions {
    private static final double NOTABLE_COLD_HOURS = 0.5;

    private EnduranceCautions() {}

    public static List<Caution> of(EnduranceQuestion question, Outcome outcome, Laws laws) {
        List<Caution> cautions = new ArrayList<>(laws.cautions());
        if (!question.brief().system().chemistry().isLeadAcid() && outcome.coldHours() > NOTABLE_COLD_HOURS) {
            cautions.add(Caution.commonPractice(
                    Severity.DANGER,
                    CautionCode.COLD_CHARGING,
                    Parameter.number("hours", outcome.coldHours(), Unit.HOUR)));
        }
        cautions.add(Caution.commonPractice(Severity.NOTE, CautionCode.NOT_A_FORECAST));
        cautions.addAll(SkyMonth.cautions(
                question.journey().stays().stream().map(stay -> stay.month().sky())));
        cautions.addAll(question.journey().stays().get(0).budget().cautions());
        return List.copyOf(new LinkedHashSet<>(cautions));
    }
}
