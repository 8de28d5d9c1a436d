package wayside.sizing.yield;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import wayside.sizing.brief.SolarYieldBrief;
import wayside.sizing.solar.SkyMonth;
import wayside.sizing.trace.Caution;
import wayside.sizing.trace.Severity;
import wayside.sizing.trace.Source;

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
        if (yield.months().stream().anyMatch(m -> m.solar().sky().meanC().value() < 0)) {
            cautions.add(note(
                    "snow",
                    "A month below freezing: snow on a panel stops it until you clear it, and that isn't counted."));
        }
        if (brief.panel().shadedShare().isEmpty()) {
            cautions.add(note(
                    "shade",
                    "A shadow across one row of cells can cost a whole panel, far more than its share of the area. Keep"
                            + " roof boxes, vents and racks off the panels' sun."));
        }
        return cautions;
    }

    private static void addDarkness(List<Caution> cautions, SolarYield yield) {
        if (yield.months().stream()
                .anyMatch(m -> m.solar().sky().extraterrestrialKwhM2().value() == 0)) {
            cautions.add(new Caution(
                    "no-sun",
                    Severity.WARNING,
                    "There is a month without sun at this place. Plan another source for it.",
                    Source.definition()));
        }
    }

    private static void addTilt(List<Caution> cautions, SolarYield yield) {
        yield.months().stream()
                .max(Comparator.comparingDouble(m -> m.tilt().lossShare().value()))
                .filter(month -> month.tilt().lossShare().value() > NOTABLE_LOSS)
                .ifPresent(month -> cautions.add(note(
                        "tilt",
                        String.format(
                                Locale.ROOT,
                                "In month %d these panels catch %.0f %% less than panels tilted %.0f degrees towards the"
                                        + " equator would. Tilting feet or a loose panel on the ground win most of it"
                                        + " back.",
                                month.month(),
                                100 * month.tilt().lossShare().value(),
                                month.tilt().bestTilt().value()))));
    }

    private static void addStrings(List<Caution> cautions, StringCheck check) {
        if (check.tooHigh()) {
            cautions.add(new Caution(
                    "string-over-voltage",
                    Severity.DANGER,
                    String.format(
                            Locale.ROOT,
                            "On a cold morning the string reaches %.0f V, the controller stands %.0f V. It can be"
                                    + " destroyed and catch fire. Put fewer modules in series or take a controller of a"
                                    + " higher voltage.",
                            check.coldOpenCircuitV().value(),
                            check.controllerMaximumV().value()),
                    CODE));
        }
        if (check.tooLow()) {
            cautions.add(new Caution(
                    "string-under-voltage",
                    Severity.WARNING,
                    String.format(
                            Locale.ROOT,
                            "On a hot roof the string works at %.1f V, too little to charge to %.1f V. Put more modules in"
                                    + " series.",
                            check.hotWorkingV().value(),
                            check.chargingV().value()),
                    Source.definition()));
        }
        cautions.add(new Caution(
                "array-live",
                Severity.WARNING,
                "Modules are live whenever light falls on them, and their direct current keeps an arc burning. Cover them"
                        + " before you work, fuse strings side by side, and follow the local code; above about 50 V leave"
                        + " it to a licensed person.",
                Source.commonPractice()));
    }

    private static Caution note(String code, String text) {
        return new Caution(code, Severity.NOTE, text, Source.commonPractice());
    }
}
