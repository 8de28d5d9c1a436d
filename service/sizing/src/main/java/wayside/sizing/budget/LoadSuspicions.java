package wayside.sizing.budget;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import wayside.sizing.brief.Load;
import wayside.sizing.brief.RunningPower;
import wayside.sizing.brief.Tier;
import wayside.sizing.demand.LoadDemand;
import wayside.sizing.trace.Caution;
import wayside.sizing.trace.CautionCode;
import wayside.sizing.trace.Parameter;
import wayside.sizing.trace.Severity;
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
                    "dutyCycle",
                    CautionCode.LABEL_AROUND_THE_CLOCK,
                    named(),
                    Parameter.number("hours", load.hoursOn(), Unit.HOUR));
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
                    "powerW",
                    CautionCode.COOKING_WATTS,
                    Parameter.number("power", watts, Unit.WATT),
                    named(),
                    Parameter.number("input", 1.5 * watts, Unit.WATT));
        }
    }

    private void units() {
        boolean byAmps = load.power() instanceof RunningPower.Amps;
        boolean mixedUp = load.power() instanceof RunningPower.Amps amps
                ? load.isAc() != amps.voltageV() >= MAINS_FROM_V
                : !load.isAc() && watts > LARGEST_DC_W;
        if (mixedUp) {
            warn(byAmps ? "voltageV" : "powerW", CautionCode.UNITS_MIXED_UP, named());
        }
    }

    private void largeAtDc() {
        if (!load.isAc() && watts >= LARGE_DC_A * busVoltageV && watts <= LARGEST_DC_W) {
            warn(
                    "supply",
                    CautionCode.LARGE_LOAD_AT_DC,
                    named(),
                    Parameter.number("current", watts / busVoltageV, Unit.AMPERE),
                    Parameter.number("voltage", busVoltageV, Unit.VOLT));
        }
    }

    private void startSurge() {
        if (load.isAc()
                && load.surge().isEmpty()
                && COMPRESSOR.matcher(name).find()
                && !NEVER_RESTS.matcher(name).find()) {
            warn("surgeFactor", CautionCode.START_SURGE_MISSING, named());
        }
    }

    private void vital() {
        boolean listed = load.tier().equals(Optional.of(Tier.VITAL));
        if (!listed && !VITAL.matcher(name).find()) {
            return;
        }
        add(Severity.DANGER, load.at().pointer(), CautionCode.MUST_NOT_FAIL, named());
        if (!load.isEssential()) {
            add(Severity.DANGER, load.at("tier"), CautionCode.MUST_NOT_BE_SHED, named());
        }
        if (BREATHING.matcher(name).find()) {
            add(Severity.NOTE, load.at().pointer(), CautionCode.HUMIDIFIER, named());
        }
    }

    private Parameter named() {
        return Parameter.text("load", load.name());
    }

    private void warn(String field, CautionCode code, Parameter... parameters) {
        add(Severity.WARNING, load.at(field), code, parameters);
    }

    private void add(Severity severity, String field, CautionCode code, Parameter... parameters) {
        cautions.add(Caution.commonPractice(severity, code, parameters).at(field));
    }
}
