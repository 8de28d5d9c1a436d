package wayside.sizing.budget;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import wayside.sizing.brief.Load;
import wayside.sizing.brief.RunningPower;
import wayside.sizing.brief.Supply;
import wayside.sizing.trace.Caution;
import wayside.sizing.trace.Severity;
import wayside.sizing.trace.Source;

/** Figures of a load list that are possible but smell of the trade's usual mix-ups. Common practice, no source. */
public final class LoadSuspicions {
    private static final Pattern CYCLING =
            Pattern.compile("fridge|freezer|refrigerator|cooler|compressor|furnace|heat pump|air con");
    private static final Pattern COOKING = Pattern.compile("microwave");
    private static final Pattern VITAL = Pattern.compile("cpap|bipap|apap|oxygen|ventilator|dialysis|insulin|medical");
    private static final double CYCLING_W = 25;
    private static final double COOKING_RATING_W = 1050;
    private static final double MAINS_FROM_V = 60;
    private static final double LARGEST_DC_W = 2000;

    private LoadSuspicions() {}

    public static List<Caution> of(List<Load> loads) {
        List<Caution> cautions = new ArrayList<>();
        for (Load load : loads) {
            String name = load.name().toLowerCase(Locale.ROOT);
            double watts = watts(load);
            if (aroundTheClock(load, watts)
                    && (CYCLING.matcher(name).find() || load.surge().isPresent())) {
                cautions.add(aroundTheClock(load));
            }
            if (COOKING.matcher(name).find() && watts < COOKING_RATING_W) {
                cautions.add(cookingWatts(load, watts));
            }
            if (VITAL.matcher(name).find()) {
                cautions.add(vital(load));
            }
            if (unitsMixedUp(load, watts)) {
                cautions.add(units(load));
            }
        }
        return cautions;
    }

    private static boolean aroundTheClock(Load load, double watts) {
        return load.hoursPerDay().orElse(0) >= 24
                && load.ambientDuty().isEmpty()
                && load.dutyCycle().orElse(1) >= 1
                && watts >= CYCLING_W;
    }

    private static boolean unitsMixedUp(Load load, double watts) {
        if (load.power() instanceof RunningPower.Amps amps) {
            return load.supply() == Supply.DC == amps.voltageV() >= MAINS_FROM_V;
        }
        return load.supply() == Supply.DC && watts > LARGEST_DC_W;
    }

    private static double watts(Load load) {
        if (load.power() instanceof RunningPower.Amps amps) {
            return amps.currentA() * amps.voltageV();
        }
        return ((RunningPower.Watts) load.power()).powerW();
    }

    private static Caution aroundTheClock(Load load) {
        return caution(
                "label-around-the-clock",
                Severity.WARNING,
                "\"%s\" is reckoned at its label's power for all 24 hours. A compressor or fan that cycles runs about a"
                        + " third of the time: give its duty cycle.",
                load);
    }

    private static Caution cookingWatts(Load load, double watts) {
        return new Caution(
                "cooking-watts",
                Severity.WARNING,
                String.format(
                        Locale.ROOT,
                        "%.0f W for \"%s\" looks like what the food gets. The plug draws about half as much again, %.0f W:"
                                + " read the input power off its label.",
                        watts,
                        load.name(),
                        1.5 * watts),
                Source.commonPractice());
    }

    private static Caution vital(Load load) {
        return caution(
                "must-not-fail",
                Severity.DANGER,
                "Someone's health hangs on \"%s\". Keep a second source that runs it for a night (a small battery of its"
                        + " own), try a night at home first, and ask its supplier what happens when power fails.",
                load);
    }

    private static Caution units(Load load) {
        return caution(
                "units-mixed-up",
                Severity.WARNING,
                "Look at \"%s\" again: amperes belong to one voltage, and 1 A at 120 V are 10 A at 12 V. Its supply and"
                        + " its figures do not go together.",
                load);
    }

    private static Caution caution(String code, Severity severity, String text, Load load) {
        return new Caution(code, severity, String.format(Locale.ROOT, text, load.name()), Source.commonPractice());
    }
}
