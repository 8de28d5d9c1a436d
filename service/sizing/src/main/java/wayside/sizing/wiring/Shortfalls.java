package wayside.sizing.wiring;

import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Message;
import wayside.sizing.trace.Parameter;
import wayside.sizing.trace.ShortfallCode;

/** Says why a circuit cannot be wired with what the tables hold. */
final class Shortfalls {
    private Shortfalls() {}

    static CircuitShortfall noRating(CircuitDuty duty) {
        Derived largest = duty.rules().fuseRatings().largestA();
        return new CircuitShortfall(
                Message.of(
                        ShortfallCode.NO_FUSE_RATING,
                        Parameter.text("circuit", duty.name()),
                        Parameter.number("needed", duty.designCurrentA()),
                        Parameter.number("largest", largest)),
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
                    Message.of(
                            ShortfallCode.NO_CONDUCTOR,
                            Parameter.text("circuit", duty.name()),
                            Parameter.number("fuse", ratingA),
                            Parameter.number("count", strongest.parallelCount()),
                            Parameter.text("size", strongest.size().title()),
                            Parameter.number("limit", strongest.fuseLimitA())),
                    ratingA,
                    strongest.fuseLimitA());
        }
        return tooLong(duty, search.stiffest());
    }

    private static CircuitShortfall tooHot(CircuitDuty duty) {
        return new CircuitShortfall(
                Message.of(
                        ShortfallCode.TOO_HOT,
                        Parameter.text("circuit", duty.name()),
                        Parameter.number("ambient", duty.surroundings().ambientC()),
                        Parameter.number("insulation", duty.surroundings().insulationC())),
                duty.surroundings().ambientC(),
                duty.surroundings().insulationC());
    }

    private static CircuitShortfall tooLong(CircuitDuty duty, SizedConductor stiffest) {
        return new CircuitShortfall(
                Message.of(
                        ShortfallCode.TOO_LONG,
                        Parameter.text("circuit", duty.name()),
                        Parameter.number("drop", stiffest.voltageDropPercent()),
                        Parameter.number("roundTrip", duty.roundTripM()),
                        Parameter.number("count", stiffest.parallelCount()),
                        Parameter.text("size", stiffest.size().title()),
                        Parameter.number("limit", duty.voltageDropLimitPercent())),
                duty.voltageDropLimitPercent(),
                stiffest.voltageDropPercent());
    }

    static CircuitShortfall noType(CircuitDuty duty) {
        FuseLink last = FuseLink.all().get(FuseLink.all().size() - 1);
        boolean voltage = duty.highestVoltageV().value() > last.ratedVoltageV().value();
        return new CircuitShortfall(
                Message.of(
                        ShortfallCode.NO_FUSE_TYPE,
                        Parameter.text("circuit", duty.name()),
                        Parameter.number("voltage", duty.highestVoltageV()),
                        Parameter.number("shortCircuit", duty.interruptA())),
                voltage ? duty.highestVoltageV() : duty.interruptA(),
                voltage ? last.ratedVoltageV() : last.breakingA());
    }
}
