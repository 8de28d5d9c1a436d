package wayside.sizing.system;

import wayside.sizing.journey.JourneyStay;
import wayside.sizing.solar.ModuleFigures;
import wayside.sizing.solar.StringWindow;
import wayside.sizing.storage.BatteryBank;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Expression;
import wayside.sizing.trace.NamedOperation;
import wayside.sizing.trace.Source;
import wayside.sizing.trace.Unit;

/**
 * How the modules of an array are strung for a tracking controller.
 *
 * @param module of which it is made
 * @param window how many of them fit in series
 * @param controllerMaximumV the smallest common limit that leaves room [V]
 * @param seriesCount in each string
 * @param parallelCount strings
 * @param coldOpenCircuitV of a string on the coldest morning [V]
 * @param hotWorkingV of a string on the hottest roof [V]
 */
public record ArrayStrings(
        ModuleFigures module,
        StringWindow window,
        Derived controllerMaximumV,
        Derived seriesCount,
        Derived parallelCount,
        Derived coldOpenCircuitV,
        Derived hotWorkingV) {
    /** Limits that charge controllers are commonly made for [V]. Common practice, no source. */
    private static final double[] COMMON_LIMITS_V = {75, 100, 150, 250, 450};

    private static final double COLD_SNAP_K = 10;
    private static final Expression MODULES = Expression.commonPractice("m = max(n_min, ceil(P / P_module - 1e-9))");
    private static final NamedOperation SERIES = NamedOperation.of(
            NamedOperation.Kind.BEST_OF,
            "the largest count from n_max down to n_min that parts the modules m into even strings; n_min when none does",
            Source.commonPractice());
    private static final Expression PARALLEL = Expression.definition("p = ceil(m / n)");
    private static final Expression STRING = Expression.definition("V = n V1");
    private static final Expression COLDEST = Expression.commonPractice("T = Tm - D / 2 - dT");
    private static final Expression HOTTEST =
            Expression.definition("Tc = Tm + D / 2 + G r").with("G", 1000, Unit.WATT_PER_SQUARE_METRE);
    private static final Expression CHARGING = Expression.definition("V_b = n V_cell");

    /**
     * What a string may be, whatever the array.
     *
     * @param module of which it is made
     * @param window how many of them fit in series
     * @param controllerMaximumV the smallest common limit that leaves room [V]
     */
    record Limits(ModuleFigures module, StringWindow window, Derived controllerMaximumV) {
        static Limits of(Site site, BatteryBank bank) {
            ModuleFigures module = TypicalModule.figures();
            Derived coldest = coldestC(site);
            Derived hottest = hottestCellC(site);
            Derived charging = chargingV(bank);
            for (int i = 0; ; i++) {
                Derived limit = controllerV(COMMON_LIMITS_V[i]);
                StringWindow window = StringWindow.of(module, coldest, hottest, limit, charging);
                if (window.fits() || i == COMMON_LIMITS_V.length - 1) {
                    return new Limits(module, window, limit);
                }
            }
        }

        private static Derived controllerV(double volts) {
            return Derived.convention(
                    "controller: highest voltage of the array",
                    volts,
                    Unit.VOLT,
                    "The smallest common limit that leaves room for a string; the controller's own label decides",
                    Source.commonPractice());
        }
    }

    static ArrayStrings of(Limits limits, Derived powerW) {
        StringWindow window = limits.window();
        Derived each = TypicalModule.powerW();
        int least = (int) window.smallestSeriesCount().value();
        int most = Math.max(least, (int) window.largestSeriesCount().value());
        Derived wanted = MODULES.value(
                "array: modules",
                Unit.COUNT,
                window.smallestSeriesCount().as("n_min"),
                powerW.as("P"),
                each.as("P_module"));
        Derived count = SERIES.value(
                "modules in series",
                seriesCount((int) wanted.value(), least, most),
                Unit.COUNT,
                wanted.as("m"),
                window.smallestSeriesCount().as("n_min"),
                window.largestSeriesCount().as("n_max"));
        Derived parallel = PARALLEL.value("strings in parallel", Unit.COUNT, wanted.as("m"), count.as("n"));
        return new ArrayStrings(
                limits.module(),
                window,
                limits.controllerMaximumV(),
                count,
                parallel,
                ofString(
                        "string: open-circuit voltage on the coldest morning",
                        count,
                        window.coldVoltage().volts()),
                ofString("string: working voltage on the hottest roof", count, window.hotWorkingV()));
    }

    private static int seriesCount(int modules, int least, int most) {
        for (int series = Math.min(most, modules); series > least; series--) {
            if (modules % series == 0) {
                return series;
            }
        }
        return least;
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

    private static Derived chargingV(BatteryBank bank) {
        Derived cells = bank.data().cellsInSeries(bank.busVoltageV().value());
        Derived cell = bank.data().chargeCellVoltageV().high();
        return CHARGING.value("highest charging voltage of the bank", Unit.VOLT, cells.as("n"), cell.as("V_cell"));
    }
}
