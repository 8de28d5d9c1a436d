package wayside.sizing.wiring;

import java.util.Optional;
import wayside.sizing.trace.Caution;
import wayside.sizing.trace.CautionCode;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Message;
import wayside.sizing.trace.Parameter;
import wayside.sizing.trace.Severity;
import wayside.sizing.trace.Source;

/**
 * A second opinion on a gauge whose rule set reckons with cool copper: the constant 10.75 of ABYC E-11 stands for copper
 * of about 27 C, and a short cable at full current gets much warmer.
 */
final class WarmDrop {
    private static final RuleSet PUBLISHED_RESISTANCE = RuleSets.of("nec");

    private WarmDrop() {}

    /** A word when the warm drop passes the limit that the rule's own drop keeps. */
    static Optional<Caution> findCaution(CircuitDuty duty, SizedConductor conductor) {
        ConductorLabels labels =
                new ConductorLabels(duty.name(), conductor.size().title());
        Derived copper = CopperTemperature.of(duty, labels, conductor.ampacityA());
        Derived resistance =
                PUBLISHED_RESISTANCE.resistanceOhmPerKm(labels, conductor.size().ratedAs(), copper);
        Derived drop = VoltageDrop.of(duty, labels, resistance, conductor.parallelCount())
                .dropPercent();
        if (drop.value() <= duty.voltageDropLimitPercent().value()) {
            return Optional.empty();
        }
        return Optional.of(new Caution(
                Message.of(
                        CautionCode.WARM_COPPER,
                        Parameter.text("circuit", duty.name()),
                        Parameter.text("size", conductor.size().title()),
                        Parameter.number("copper", copper),
                        Parameter.number("drop", drop),
                        Parameter.number("limit", duty.voltageDropLimitPercent())),
                Severity.NOTE,
                Source.standard("NFPA 70 National Electrical Code, 2023", "chapter 9 Table 8, warmed")));
    }
}
