package wayside.sizing.wiring;

import java.util.Locale;
import java.util.Optional;
import wayside.sizing.trace.Caution;
import wayside.sizing.trace.Derived;
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
        Derived copper = CopperTemperature.of(duty, conductor.ampacityA());
        double percent = warmPercent(duty, conductor, copper);
        if (percent <= duty.voltageDropLimitPercent().value()) {
            return Optional.empty();
        }
        return Optional.of(new Caution(
                "warm-copper",
                Severity.NOTE,
                String.format(
                        Locale.ROOT,
                        "%s: at full current the copper of %s warms to about %.0f C and loses %.1f %%, a little over the"
                                + " limit of %.1f %% that the rule's own formula keeps. Take the next size if the load"
                                + " minds.",
                        duty.name(),
                        conductor.size().title(),
                        copper.value(),
                        percent,
                        duty.voltageDropLimitPercent().value()),
                Source.standard("NFPA 70 National Electrical Code, 2023", "chapter 9 Table 8, warmed")));
    }

    private static double warmPercent(CircuitDuty duty, SizedConductor conductor, Derived copper) {
        double ohmPerKm = PUBLISHED_RESISTANCE
                .resistanceOhmPerKm(conductor.size().ratedAs(), copper)
                .value();
        double volts = VoltageDrop.volts(
                duty.roundTripM().value(),
                duty.currentA().value(),
                ohmPerKm,
                conductor.parallelCount().value());
        return 100 * volts / duty.voltageV().value();
    }
}
