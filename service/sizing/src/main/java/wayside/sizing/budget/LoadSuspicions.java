package wayside.sizing.budget;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import wayside.sizing.brief.Load;
import wayside.sizing.brief.RunningPower;
import wayside.sizing.demand.LoadDemand;
import wayside.sizing.trace.Caution;
import wayside.sizing.trace.Severity;
import wayside.sizing.trace.Source;
import wayside.sizing.trace.Unit;

/**
 * Figures of a load that are possible but smell of the trade's usual mix-ups. Common practice, no source. This is the only home
 * of these rules; each caution says which field of the request it is about.
 */
final class LoadSuspicions {
    private static final Pattern COLD = Pattern.compile("fridge|freezer|refrigerator|cooler|cool ?box");
    /** Cold things that run all the time, and what runs beside a fridge on gas. */
    private static final Pattern NEVER_RESTS = Pattern.compile("thermo|peltier|absorption|gas|board|evaporat");

    private static final Pattern CYCLING = Pattern.compile("compressor|furnace|heat pump|air.?con");
    private static final Pattern COMPRESSOR = Pattern.compile("fridge|freezer|refrigerator|compressor|air.?con");
    private static final Pattern COOKING = Pattern.compile("microwave");
    private static final Pattern BREATHING = Pattern.compile("\\b[cab]i?pap");
    private static final Pattern VITAL =
            Pattern.compile("\\b[cab]i?pap|oxygen|ventilator|nebuli|dialysis|insulin|medical");

    /** A fridge that is listed for longer than this a day is listed by its label, not by how long it runs. */
    private static final double LONG_FOR_COLD_HOURS = 12;

    private static final double CYCLING_W = 25;
    private static final double COOKING_RATING_W = 1050;
    private static final double MAINS_FROM_V = 60;
    private static final double LARGEST_DC_W = 2000;
    private static final double LARGE_DC_A = 50;

    private final Load load;
    private final String name;
    private final double watts;
    private final double busVoltageV;
    private final List<Caution> cautions = new ArrayList<>();

    private LoadSuspicions(LoadDemand demand, double busVoltageV) {
        load = demand.load();
        name = load.name().toLowerCase(Locale.ROOT);
        watts = demand.powerOfOneW().value();
        this.busVoltageV = busVoltageV;
    }

    /**
     * One caution for each load and rule, in the order of the loads.
     *
     * @param busVoltageV nominal [V]
     */
    static List<Caution> of(List<LoadDemand> loads, double busVoltageV) {
        List<Caution> cautions = new ArrayList<>();
        for (LoadDemand load : loads) {
            cautions.addAll(new LoadSuspicions(load, busVoltageV).collect());
        }
        return cautions;
    }

    private List<Caution> collect() {
        aroundTheClock();
        cookingWatts();
        units();
        largeAtDc();
        startSurge();
        vital();
        return cautions;
    }

    private void aroundTheClock() {
        boolean always = load.ambientDuty().isEmpty() && load.dutyCycle().orElse(1) >= 1;
        if (always && watts >= CYCLING_W && restsAtTimes()) {
            warn(
                    "label-around-the-clock",
                    "dutyCycle",
                    String.format(
                            Locale.ROOT,
                            "\"%s\" is reckoned at its label's power for all of its %.0f hours. A compressor or fan that cycles"
                                    + " runs about a third of the time: give its duty cycle.",
                            load.name(),
                            load.hoursOn()));
        }
    }

    private boolean restsAtTimes() {
        if (COLD.matcher(name).find()) {
            return load.hoursOn() > LONG_FOR_COLD_HOURS
                    && !NEVER_RESTS.matcher(name).find();
        }
        return load.hoursOn() >= Unit.HOURS_PER_DAY
                && (CYCLING.matcher(name).find() || load.surge().isPresent());
    }

    /** A rated current is taken at the plug; only watts are printed for what the food gets. */
    private void cookingWatts() {
        if (COOKING.matcher(name).find() && load.power() instanceof RunningPower.Watts && watts < COOKING_RATING_W) {
            warn(
                    "cooking-watts",
                    "powerW",
                    String.format(
                            Locale.ROOT,
                            "%.0f W for \"%s\" looks like what the food gets. The plug draws about half as much again, %.0f W:"
                                    + " read the input power off its label.",
                            watts,
                            load.name(),
                            1.5 * watts));
        }
    }

    private void units() {
        boolean byAmps = load.power() instanceof RunningPower.Amps;
        boolean mixedUp = load.power() instanceof RunningPower.Amps amps
                ? load.isAc() != amps.voltageV() >= MAINS_FROM_V
                : !load.isAc() && watts > LARGEST_DC_W;
        if (mixedUp) {
            warn(
                    "units-mixed-up",
                    byAmps ? "voltageV" : "powerW",
                    String.format(
                            Locale.ROOT,
                            "Look at \"%s\" again: amperes belong to one voltage, and 1 A at 120 V are 10 A at 12 V. Its supply"
                                    + " and its figures do not go together.",
                            load.name()));
        }
    }

    private void largeAtDc() {
        if (!load.isAc() && watts >= LARGE_DC_A * busVoltageV && watts <= LARGEST_DC_W) {
            warn(
                    "large-load-at-dc",
                    "supply",
                    String.format(
                            Locale.ROOT,
                            "\"%s\" takes %.0f A at %.0f V, and an outlet carries about 25 A. Does it run through the inverter?"
                                    + " If it is wired straight to the battery it needs a cable and a fuse of its own.",
                            load.name(),
                            watts / busVoltageV,
                            busVoltageV));
        }
    }

    private void startSurge() {
        if (load.isAc()
                && load.surge().isEmpty()
                && COMPRESSOR.matcher(name).find()
                && !NEVER_RESTS.matcher(name).find()) {
            warn(
                    "start-surge-missing",
                    "surgeFactor",
                    String.format(
                            Locale.ROOT,
                            "The compressor of \"%s\" draws several times as much for a moment at its start, and the inverter"
                                    + " must bear it: give its start surge, about 5 times when nothing is known.",
                            load.name()));
        }
    }

    private void vital() {
        if (VITAL.matcher(name).find()) {
            String humidifier = BREATHING.matcher(name).find()
                    ? " Run it from a DC cord where it has one, and count its humidifier, which can triple the draw."
                    : "";
            String shed =
                    load.isEssential() ? "" : " It is listed as not essential, so it is among the first to be shed.";
            add(
                    "must-not-fail",
                    Severity.DANGER,
                    load.isEssential() ? load.at().pointer() : load.at("essential"),
                    String.format(
                            Locale.ROOT,
                            "Someone's health hangs on \"%s\".%s Keep a second source that runs it for a night (a small battery"
                                    + " of its own), try a night at home first, and ask its supplier what happens when power"
                                    + " fails.%s",
                            load.name(),
                            shed,
                            humidifier));
        }
    }

    private void warn(String code, String field, String text) {
        add(code, Severity.WARNING, load.at(field), text);
    }

    private void add(String code, Severity severity, String field, String text) {
        cautions.add(new Caution(code, severity, text, Source.commonPractice()).at(field));
    }
}
