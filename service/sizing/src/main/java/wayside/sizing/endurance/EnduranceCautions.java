package wayside.sizing.endurance;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import wayside.sizing.ledger.Outcome;
import wayside.sizing.solar.SkyMonth;
import wayside.sizing.trace.Caution;
import wayside.sizing.trace.Severity;
import wayside.sizing.trace.Source;

/** What whoever trusts a simulated trip must know. */
public final class EnduranceCautions {
    private static final double NOTABLE_COLD_HOURS = 0.5;

    private EnduranceCautions() {}

    public static List<Caution> of(EnduranceQuestion question, Outcome outcome) {
        List<Caution> cautions = new ArrayList<>();
        if (!question.brief().system().chemistry().isLeadAcid() && outcome.coldHours() > NOTABLE_COLD_HOURS) {
            cautions.add(new Caution(
                    "cold-charging",
                    Severity.DANGER,
                    String.format(
                            Locale.ROOT,
                            "In about %.0f hours of this trip charge is on offer while the battery is below its limit of"
                                    + " %.0f C. A lithium battery charged in frost is damaged for good and can short inside"
                                    + " later: its electronics must refuse, and the trip counts that charge as lost. In the"
                                    + " heated cabin, or with a heater, it would not be.",
                            outcome.coldHours(),
                            question.data().lowestChargeC().value()),
                    Source.commonPractice()));
        }
        cautions.add(new Caution(
                "not-a-forecast",
                Severity.NOTE,
                "A chance is said of many such trips, not of yours. Parking in the shade, snow on the panel or a load that"
                        + " isn't on the list changes it more than the weather does.",
                Source.commonPractice()));
        cautions.addAll(SkyMonth.cautions(question.journey().stays().stream().map(stay -> stay.month().sky())));
        cautions.addAll(question.journey().stays().get(0).budget().cautions());
        return List.copyOf(new LinkedHashSet<>(cautions));
    }
}
