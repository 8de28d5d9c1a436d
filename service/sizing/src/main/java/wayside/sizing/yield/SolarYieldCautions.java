package wayside.sizing.yield;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import wayside.sizing.brief.SolarYieldBrief;
import wayside.sizing.solar.sky.SkyMonth;
import wayside.sizing.trace.Caution;
import wayside.sizing.trace.CautionCode;
import wayside.sizing.trace.Message;
import wayside.sizing.trace.Parameter;
import wayside.sizing.trace.Severity;
import wayside.sizing.trace.Source;
import wayside.sizing.trace.Unit;

/** What a solar yield gives cause to say. */
public final class SolarYieldCautions {
    private static final double NOTABLE_LOSS = 0.2;
    private static final Source CODE = Source.standard("NFPA 70 National Electrical Code, 2020", "690.7");

    private SolarYieldCautions() {}

    public static List<Caution> of(SolarYieldBrief brief, SolarYield yield) {
        List<Caution> cautions = new ArrayList<>();
        yield.strings().ifPresent(check -> addStrings(cautions, check));
        cautions.addAll(SkyMonth.cautions(
                yield.months().stream().map(month -> month.solar().sky())));
        addDarkness(cautions, yield);
        addTilt(cautions, yield);
        if (brief.panel().snowCoveredShare().isEmpty()
                && yield.months().stream().anyMatch(m -> m.solar().sky().meanC().value() < 0)) {
            cautions.add(Caution.commonPractice(Severity.NOTE, CautionCode.SNOW));
        }
        if (brief.panel().shadedShare().isEmpty()) {
            cautions.add(Caution.commonPractice(Severity.NOTE, CautionCode.SHADE));
        }
        return cautions;
    }

    private static void addDarkness(List<Caution> cautions, SolarYield yield) {
        if (yield.months().stream()
                .anyMatch(m -> m.solar().sky().extraterrestrialKwhM2().value() == 0)) {
            cautions.add(new Caution(Message.of(CautionCode.NO_SUN), Severity.WARNING, Source.definition()));
        }
    }

    private static void addTilt(List<Caution> cautions, SolarYield yield) {
        yield.months().stream()
                .max(Comparator.comparingDouble(m -> m.tilt().lossShare().value()))
                .filter(month -> month.tilt().lossShare().value() > NOTABLE_LOSS)
                .ifPresent(month -> cautions.add(Caution.commonPractice(
                        Severity.NOTE,
                        CautionCode.TILT,
                        Parameter.number("month", month.month(), Unit.COUNT),
                        Parameter.number("loss", month.tilt().lossShare()),
                        Parameter.number("bestTilt", month.tilt().bestTilt()))));
    }

    private static void addStrings(List<Caution> cautions, StringCheck check) {
        if (check.tooHigh()) {
            cautions.add(new Caution(
                    Message.of(
                            CautionCode.STRING_OVER_VOLTAGE,
                            Parameter.number("coldVoltage", check.coldOpenCircuitV()),
                            Parameter.number("controllerLimit", check.controllerMaximumV())),
                    Severity.DANGER,
                    CODE));
        }
        if (check.tooLow()) {
            cautions.add(new Caution(
                    Message.of(
                            CautionCode.STRING_UNDER_VOLTAGE,
                            Parameter.number("hotVoltage", check.hotWorkingV()),
                            Parameter.number("chargingVoltage", check.chargingV())),
                    Severity.WARNING,
                    Source.definition()));
        }
        cautions.add(Caution.commonPractice(Severity.WARNING, CautionCode.ARRAY_LIVE));
    }
}
