package wayside.sizing.wiring;

import java.util.Comparator;
import java.util.Locale;
import java.util.function.ToDoubleFunction;
import wayside.sizing.trace.Derived;

/** Puts into words why a circuit cannot be wired with what the tables hold. */
final class Shortfalls {
    private Shortfalls() {}

    static CircuitShortfall noRating(CircuitDuty duty) {
        Derived largest = duty.rules().fuseRatings().largestA();
        return new CircuitShortfall(
                "no-fuse-rating",
                text(
                        "%s asks for a fuse of %.0f A and the largest standard rating is %.0f A. Split it into several"
                                + " circuits, or raise the voltage.",
                        duty.name(), duty.designCurrentA().value(), largest.value()),
                duty.designCurrentA(),
                largest);
    }

    static CircuitShortfall noConductor(CircuitDuty duty, Derived ratingA, ConductorSearch search) {
        SizedConductor strongest = search.strongest();
        if (strongest.ampacityA().value() == 0) {
            return tooHot(duty);
        }
        if (strongest.fuseLimitA().value() < ratingA.value()) {
            return new CircuitShortfall(
                    "no-conductor",
                    text(
                            "%s needs a conductor for a fuse of %.0f A; where it lies, %d x %s stand %.0f A. Take cable"
                                    + " for a higher temperature, keep it apart from others, split the circuit, or"
                                    + " raise the voltage.",
                            duty.name(),
                            ratingA.value(),
                            (int) strongest.parallelCount().value(),
                            strongest.size().title(),
                            strongest.fuseLimitA().value()),
                    ratingA,
                    strongest.fuseLimitA());
        }
        return tooLong(duty, search.stiffest());
    }

    private static CircuitShortfall tooHot(CircuitDuty duty) {
        return new CircuitShortfall(
                "too-hot",
                text(
                        "%s lies at %.0f C, hotter than insulation of %.0f C can carry any current in. Reroute it, or take"
                                + " cable for a higher temperature.",
                        duty.name(),
                        duty.surroundings().ambientC().value(),
                        duty.surroundings().insulationC().value()),
                duty.surroundings().ambientC(),
                duty.surroundings().insulationC());
    }

    private static CircuitShortfall tooLong(CircuitDuty duty, SizedConductor stiffest) {
        return new CircuitShortfall(
                "no-conductor",
                text(
                        "%s loses %.1f %% over %.1f m out and back even with %d x %s; the limit is %.1f %%. Shorten the"
                                + " run, split the circuit, or raise the voltage.",
                        duty.name(),
                        stiffest.voltageDropPercent().value(),
                        duty.roundTripM().value(),
                        (int) stiffest.parallelCount().value(),
                        stiffest.size().title(),
                        duty.voltageDropLimitPercent().value()),
                duty.voltageDropLimitPercent(),
                stiffest.voltageDropPercent());
    }

    static CircuitShortfall noType(CircuitDuty duty) {
        FuseLink highest = best(link -> link.ratedVoltageV().value());
        FuseLink sturdiest = best(link -> link.breakingA().value());
        boolean voltage =
                duty.highestVoltageV().value() > highest.ratedVoltageV().value();
        return new CircuitShortfall(
                "no-fuse-type",
                text(
                        "No kind of fuse in the tables serves %s, which reaches %.1f V and may draw %.0f A into a short"
                                + " circuit. Ask a fuse maker.",
                        duty.name(),
                        duty.highestVoltageV().value(),
                        duty.interruptA().value()),
                voltage ? duty.highestVoltageV() : duty.interruptA(),
                voltage ? highest.ratedVoltageV() : sturdiest.breakingA());
    }

    private static FuseLink best(ToDoubleFunction<FuseLink> by) {
        return FuseLink.all().stream().max(Comparator.comparingDouble(by)).orElseThrow();
    }

    private static String text(String format, Object... values) {
        return String.format(Locale.ROOT, format, values);
    }
}
