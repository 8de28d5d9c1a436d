package wayside.sizing.system;

import java.util.List;
import wayside.sizing.brief.ControllerSize;
import wayside.sizing.journey.JourneyStay;
import wayside.sizing.sizes.SizeFigure;
import wayside.sizing.solar.array.ModuleFigures;
import wayside.sizing.solar.array.StringWindow;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Expression;
import wayside.sizing.trace.NamedOperation;
import wayside.sizing.trace.Source;
import wayside.sizing.trace.Unit;

/**
 * How the modules of an array are strung for a tracking controller: equal strings of whole modules. An array that was given
 * keeps its power, as so many equal modules; one that is sized is made of modules that exist.
 *
 * @param module of which it is made
 * @param modulePowerW rated, of each [W]
 * @param window how many of them fit in series
 * @param controllerMaximumV the smallest common limit that leaves room [V]
 * @param seriesCount in each string
 * @param parallelCount strings
 * @param coldOpenCircuitV of a string on the coldest morning [V]
 * @param hotWorkingV of a string on the hottest roof [V]
 */
public record ArrayStrings(
        ModuleFigures module,
        Derived modulePowerW,
        StringWindow window,
        Derived controllerMaximumV,
        Derived seriesCount,
        Derived parallelCount,
        Derived coldOpenCircuitV,
        Derived hotWorkingV) {
    private static final double COLD_SNAP_K = 10;
    private static final Expression LONE = Expression.definition("n = 1");
    private static final Expression MODULES = Expression.commonPractice("m = max(n_min, ceil(P / P_module - 1e-9))");
    private static final NamedOperation SERIES = NamedOperation.of(
            NamedOperation.Kind.BEST_OF,
            "the count from n_min to n_max, above 1 where there is more than one module, whose whole strings need the fewest"
                    + " modules beyond m; of several the longest",
            Source.commonPractice());
    private static final Expression PARALLEL = Expression.definition("p = ceil(m / n)");
    private static final Expression EACH = Expression.definition("P_module = P / (n p)");
    private static final Expression STRING = Expression.definition("V = n V1");
    private static final Expression COLDEST = Expression.commonPractice("T = Tm - D / 2 - dT");
    private static final Expression HOTTEST =
            Expression.definition("Tc = Tm + D / 2 + G r").with("G", 1000, Unit.WATT_PER_SQUARE_METRE);
    private static final Expression CHARGING = Expression.definition("V_b = n V_cell");

    /**
     * The coldest and the hottest that an array meets.
     *
     * @param coldestC morning of the trip [C]
     * @param hottestC cells in full sun [C]
     */
    record Weather(Derived coldestC, Derived hottestC) {
        static Weather of(Site site) {
            return new Weather(ArrayStrings.coldestC(site), hottestCellC(site));
        }

        StringWindow window(ModuleFigures module, Derived chargingV, Derived controllerV) {
            return StringWindow.of(module, coldestC, hottestC, controllerV, chargingV);
        }

        /** Of a module whatever the controller: its voltages. */
        StringWindow window(ModuleFigures module, Derived chargingV) {
            return window(module, chargingV, chargingV);
        }
    }

    /**
     * What a string may be, whatever the array.
     *
     * @param module of which it is made
     * @param window how many of them fit in series
     * @param controllerMaximumV the limit of a controller [V]
     */
    record Limits(ModuleFigures module, StringWindow window, Derived controllerMaximumV) {
        /** By controllers of rising voltage, those that leave room for a string; the highest alone where none does. */
        static List<Limits> of(Site site) {
            ModuleFigures module = TypicalModule.figures();
            Weather weather = Weather.of(site);
            List<ControllerSize> ladder = Controllers.byVoltage(site);
            List<Limits> all = ladder.stream()
                    .map(controller -> of(site, weather, module, controller))
                    .toList();
            List<Limits> fitting =
                    all.stream().filter(limits -> limits.window().fits()).toList();
            return fitting.isEmpty() ? all.subList(all.size() - 1, all.size()) : fitting;
        }

        static Limits of(Site site, Weather weather, ModuleFigures module, ControllerSize controller) {
            Derived volts = SizeFigure.of(
                    controller,
                    "controller: highest voltage of the array",
                    controller.highestArrayV(),
                    Unit.VOLT,
                    "highestArrayV");
            return new Limits(module, weather.window(module, chargingV(site), volts), volts);
        }
    }

    /** Of whole modules that exist. */
    static ArrayStrings of(Site site, BuyableArray array) {
        StringOption option = array.option();
        ModuleFigures module = ModulePart.figures(option.module());
        Limits limits = Limits.of(site, Weather.of(site), module, option.controller());
        return of(limits, module, array.modulePowerW(), array.seriesCount(), array.parallelCount());
    }

    /** An array of a rated power as equal strings of equal modules, each of about the usual power. */
    static ArrayStrings of(Limits limits, Derived powerW) {
        Count count = Count.of(limits.window(), powerW);
        Derived each = EACH.value(
                "module: rated power",
                Unit.WATT,
                powerW.as("P"),
                count.series().as("n"),
                count.parallel().as("p"));
        return of(limits, TypicalModule.figures(each), each, count.series(), count.parallel());
    }

    private static ArrayStrings of(
            Limits limits, ModuleFigures module, Derived each, Derived series, Derived parallel) {
        return new ArrayStrings(
                module,
                each,
                limits.window(),
                limits.controllerMaximumV(),
                series,
                parallel,
                ofString(
                        "string: open-circuit voltage on the coldest morning",
                        series,
                        limits.window().coldVoltage().volts()),
                ofString(
                        "string: working voltage on the hottest roof",
                        series,
                        limits.window().hotWorkingV()));
    }

    /** Modules in each string, and strings. */
    private record Count(Derived series, Derived parallel) {
        static Count of(StringWindow window, Derived powerW) {
            if (isALoneTwelveVoltModule(window, powerW)) {
                return new Count(
                        LONE.value("string: modules in series", Unit.COUNT),
                        LONE.value("array: strings in parallel", Unit.COUNT));
            }
            int least = (int) window.smallestSeriesCount().value();
            int most = Math.max(least, (int) window.largestSeriesCount().value());
            Derived wanted = MODULES.value(
                    "array: modules, at least",
                    Unit.COUNT,
                    window.smallestSeriesCount().as("n_min"),
                    powerW.as("P"),
                    TypicalModule.powerW().as("P_module"));
            Derived series = SERIES.value(
                    "string: modules in series",
                    inSeries((int) wanted.value(), least, most),
                    Unit.COUNT,
                    wanted.as("m"),
                    window.smallestSeriesCount().as("n_min"),
                    window.largestSeriesCount().as("n_max"));
            return new Count(
                    series, PARALLEL.value("array: strings in parallel", Unit.COUNT, wanted.as("m"), series.as("n")));
        }

        /**
         * The most usual array of all: one module made for 12 V on a 12 V bank. Only the hottest roof asks for a second, and the laws
         * say so.
         */
        private static boolean isALoneTwelveVoltModule(StringWindow window, Derived powerW) {
            return window.smallestSeriesCount().value() == 2
                    && powerW.value() <= TypicalModule.powerW().value();
        }

        private static int inSeries(int modules, int least, int most) {
            int shortest = Math.max(least, Math.min(2, Math.min(most, modules)));
            int best = shortest;
            for (int series = shortest; series <= Math.min(most, modules); series++) {
                if (strung(modules, series) <= strung(modules, best)) {
                    best = series;
                }
            }
            return best;
        }

        private static int strung(int modules, int series) {
            return (modules + series - 1) / series * series;
        }
    }

    private static Derived ofString(String label, Derived count, Derived each) {
        return STRING.value(label, Unit.VOLT, count.as("n"), each.as("V1"));
    }

    private static Derived coldestC(Site site) {
        JourneyStay stay = site.journey().coldest();
        Derived snap = Derived.convention(
                "how much colder than usual a morning may be",
                COLD_SNAP_K,
                Unit.KELVIN,
                "A month's mean hides its coldest morning",
                Source.commonPractice());
        return COLDEST.value(
                "coldest morning of the trip",
                Unit.CELSIUS,
                stay.month().sky().meanC().as("Tm"),
                stay.month().sky().dailySwingK().as("D"),
                snap.as("dT"));
    }

    private static Derived hottestCellC(Site site) {
        JourneyStay stay = site.journey().hottest();
        Derived rise = stay.month().array().riseKPerWm2();
        return HOTTEST.value(
                "cells in full sun on the hottest afternoon",
                Unit.CELSIUS,
                stay.month().sky().meanC().as("Tm"),
                stay.month().sky().dailySwingK().as("D"),
                rise.as("r"));
    }

    /** The highest that the bank is charged with [V]. */
    static Derived chargingV(Site site) {
        Derived cells = site.chemistry().cellsInSeries(site.busVoltageV().value());
        Derived cell = site.chemistry().chargeCellVoltageV().high();
        return CHARGING.value("highest charging voltage of the bank", Unit.VOLT, cells.as("n"), cell.as("V_cell"));
    }
}
