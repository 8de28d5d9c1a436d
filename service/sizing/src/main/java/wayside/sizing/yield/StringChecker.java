package wayside.sizing.yield;

import java.util.List;
import wayside.sizing.brief.SolarYieldBrief;
import wayside.sizing.brief.StringWish;
import wayside.sizing.solar.RoofExtremes;
import wayside.sizing.solar.SolarMonth;
import wayside.sizing.solar.UntrackedShare;
import wayside.sizing.solar.array.ModuleFigures;
import wayside.sizing.solar.array.StringWindow;
import wayside.sizing.storage.BusVoltage;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Expression;
import wayside.sizing.trace.Source;
import wayside.sizing.trace.Unit;

/** Checks the strings of a solar yield against the coldest morning and the hottest roof of its months. */
final class StringChecker {
    private static final double CONTROLLER_V = 100;
    /** Lead-acid absorption, 14.4 V on a 12 V bus. */
    private static final double CHARGING_SHARE = 1.2;

    private static final Expression OF_A_STRING = Expression.definition("V_string = n V");
    private static final Expression CHARGING = Expression.commonPractice("V_b = s V");

    private StringChecker() {}

    static StringCheck check(SolarYieldBrief brief, StringWish wish, List<SolarMonth> months) {
        ModuleFigures module = ModuleFigures.of(wish.module());
        Derived controller = controller(wish);
        Derived charging = charging(brief);
        StringWindow window =
                StringWindow.of(module, coldest(wish, months), RoofExtremes.hottestCellC(months), controller, charging);
        Derived series = series(wish, window);
        Derived parallel = parallel(wish);
        return new StringCheck(
                window,
                series,
                parallel,
                times(
                        "string: open-circuit voltage on the coldest morning",
                        series,
                        window.coldVoltage().volts()),
                times("string: working voltage on the hottest roof", series, window.hotWorkingV()),
                controller,
                charging,
                StringWindow.maximumCurrentA(module, parallel),
                StringWindow.conductorCurrentA(module, parallel),
                UntrackedShare.of(series, module, bus(brief), months));
    }

    private static Derived times(String label, Derived series, Derived volts) {
        return OF_A_STRING.value(label, Unit.VOLT, series.as("n"), volts.as("V"));
    }

    private static Derived coldest(StringWish wish, List<SolarMonth> months) {
        String field = wish.at("coldestC");
        return wish.coldestC().isPresent()
                ? Derived.given("air on the coldest morning", wish.coldestC().getAsDouble(), Unit.CELSIUS, field)
                : RoofExtremes.coldestC(months, field);
    }

    private static Derived controller(StringWish wish) {
        String label = "highest voltage the controller stands";
        return Derived.byDefault(
                        label,
                        CONTROLLER_V,
                        Unit.VOLT,
                        wish.at("controllerMaximumVoltageV"),
                        "A common limit of small controllers; take the figure on yours",
                        Source.commonPractice())
                .unlessGiven(wish.controllerMaximumV());
    }

    private static Derived bus(SolarYieldBrief brief) {
        return BusVoltage.nominalV(brief.busVoltageV(), brief.at("busVoltageV"));
    }

    private static Derived charging(SolarYieldBrief brief) {
        Derived share = Derived.convention(
                "highest charging voltage as a multiple of the nominal one",
                CHARGING_SHARE,
                Unit.COUNT,
                "The absorption of lead-acid, 14.4 V on a 12 V bus",
                Source.commonPractice());
        return CHARGING.value(
                "highest charging voltage", Unit.VOLT, share.as("s"), bus(brief).as("V"));
    }

    private static Derived series(StringWish wish, StringWindow window) {
        String field = wish.at("seriesCount");
        if (wish.seriesCount().isPresent()) {
            return Derived.given("modules in series", wish.seriesCount().getAsInt(), Unit.COUNT, field);
        }
        double most = Math.max(1, window.largestSeriesCount().value());
        return Derived.byDefault(
                "modules in series",
                Math.min(most, Math.max(1, window.smallestSeriesCount().value())),
                Unit.COUNT,
                field,
                "As few as charge the bank on the hottest roof",
                Source.commonPractice());
    }

    private static Derived parallel(StringWish wish) {
        return Derived.byDefault(
                        "strings side by side",
                        1,
                        Unit.COUNT,
                        wish.at("parallelCount"),
                        "One string",
                        Source.commonPractice())
                .unlessGiven(wish.parallelCount());
    }
}
