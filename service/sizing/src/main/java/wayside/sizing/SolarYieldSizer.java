package wayside.sizing;

import java.time.Month;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import wayside.sizing.brief.MonthWish;
import wayside.sizing.brief.SolarYieldBrief;
import wayside.sizing.solar.ArrayModel;
import wayside.sizing.solar.Hdkr;
import wayside.sizing.solar.MonthAt;
import wayside.sizing.solar.MonthLight;
import wayside.sizing.solar.PanelTilt;
import wayside.sizing.solar.SkyMonth;
import wayside.sizing.solar.SolarCalendar;
import wayside.sizing.solar.SolarMonth;
import wayside.sizing.solar.SunMonth;
import wayside.sizing.solar.epw.ReplayedMonth;
import wayside.sizing.solar.epw.TypicalMonth;
import wayside.sizing.solar.epw.TypicalYear;
import wayside.sizing.solar.epw.YearOnPlane;
import wayside.sizing.trace.Answer;
import wayside.sizing.trace.Assumption;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Source;
import wayside.sizing.trace.Unit;
import wayside.sizing.yield.SolarYield;
import wayside.sizing.yield.StringCheck;
import wayside.sizing.yield.YieldMonth;

/** The solar yield: what an array brings at a place, month by month. */
public final class SolarYieldSizer {
    private static final double EACH_W = 100;

    private SolarYieldSizer() {}

    /** The yield under the sky that the brief gives, or the climatology of its place. */
    public static Answer<SolarYield> size(SolarYieldBrief brief) {
        ArrayModel array = ArrayModel.of(brief.panel(), "/panel", brief.place().latitude());
        Derived power = power(brief);
        List<YieldMonth> months = new ArrayList<>();
        for (MonthAt at : months(brief)) {
            months.add(month(at, SolarMonth.of(at, array), power));
        }
        return answer(brief, power, months);
    }

    /** The yield of a typical year: each of its hours carried onto the panel. The place is the file's. */
    public static Answer<SolarYield> size(SolarYieldBrief brief, TypicalYear year) {
        SolarYieldBrief there = brief.at(year.place());
        ArrayModel array = ArrayModel.of(there.panel(), "/panel", there.place().latitude());
        YearOnPlane onPlane = YearOnPlane.of(
                year, array.position().plane(), Hdkr.MODEL, array.albedo().value());
        Derived power = power(there);
        List<YieldMonth> months = new ArrayList<>();
        for (MonthAt open : months(there)) {
            TypicalMonth typical = TypicalMonth.of(year, open.month());
            MonthAt at = new MonthAt(
                    open.place(),
                    open.month(),
                    Optional.of(typical.sky()),
                    Optional.of(typical.ambient()),
                    open.label(),
                    "/typicalYear",
                    "/typicalYear");
            MonthLight light = ReplayedMonth.of(year, onPlane, array, at.month());
            months.add(month(at, SolarMonth.of(at, SkyMonth.of(at), array, light), power));
        }
        return answer(there, power, months);
    }

    private static Answer<SolarYield> answer(SolarYieldBrief brief, Derived power, List<YieldMonth> months) {
        List<SolarMonth> solar = months.stream().map(YieldMonth::solar).toList();
        Optional<StringCheck> strings = brief.strings().map(wish -> StringChecker.check(brief, wish, solar));
        SolarYield result = new SolarYield(power, months, strings);
        List<Assumption> choices =
                solar.stream().flatMap(month -> month.choices().stream()).toList();
        return new Answer<>(result, figures(result), choices, SolarYieldCautions.of(brief, result));
    }

    private static List<MonthAt> months(SolarYieldBrief brief) {
        if (brief.months().isEmpty()) {
            return IntStream.rangeClosed(1, SolarCalendar.MONTHS)
                    .mapToObj(month -> at(brief, MonthWish.of(month), "/months"))
                    .toList();
        }
        List<MonthAt> months = new ArrayList<>();
        for (int i = 0; i < brief.months().size(); i++) {
            months.add(at(brief, brief.months().get(i), "/months/" + i));
        }
        return months;
    }

    private static MonthAt at(SolarYieldBrief brief, MonthWish wish, String path) {
        String name = Month.of(wish.month()).getDisplayName(TextStyle.FULL, Locale.ENGLISH);
        return new MonthAt(brief.place(), wish.month(), wish.sky(), wish.ambient(), name, path, "/place");
    }

    private static YieldMonth month(MonthAt at, SolarMonth solar, Derived power) {
        Derived yield = solar.dailyWh(at.label() + ": yield of the mean day", power);
        YieldRange range = YieldRange.of(at, solar, yield);
        return new YieldMonth(
                at.month(), solar, SunMonth.of(at), PanelTilt.of(at, solar), yield, range.lowWh(), range.highWh());
    }

    private static Derived power(SolarYieldBrief brief) {
        return brief.solarPowerW().isPresent()
                ? Derived.given("array: rated power", brief.solarPowerW().getAsDouble(), Unit.WATT, "/solarPowerW")
                : Derived.assumed(
                        "array: rated power",
                        EACH_W,
                        Unit.WATT,
                        "/solarPowerW",
                        "The yield of each 100 W; it grows in proportion",
                        Source.definition());
    }

    private static List<Derived> figures(SolarYield yield) {
        List<Derived> figures = new ArrayList<>();
        for (YieldMonth month : yield.months()) {
            figures.addAll(List.of(
                    month.solar().horizontalKwhM2(),
                    month.solar().sky().lowKwhM2(),
                    month.solar().sky().highKwhM2(),
                    month.solar().planeKwhM2(),
                    month.solar().cellTemperatureC(),
                    month.solar().yieldWhPerW(),
                    month.yieldWhPerDay(),
                    month.lowWhPerDay(),
                    month.highWhPerDay(),
                    month.sun().daylightHours(),
                    month.sun().noonAltitudeDegrees(),
                    month.tilt().bestTilt(),
                    month.tilt().bestKwhM2(),
                    month.tilt().lossShare()));
        }
        yield.strings().ifPresent(check -> addStrings(figures, check));
        return figures;
    }

    private static void addStrings(List<Derived> figures, StringCheck check) {
        figures.addAll(List.of(
                check.seriesCount(),
                check.parallelCount(),
                check.window().smallestSeriesCount(),
                check.window().largestSeriesCount(),
                check.coldOpenCircuitV(),
                check.hotWorkingV(),
                check.controllerMaximumV(),
                check.chargingV(),
                check.maximumCurrentA(),
                check.conductorCurrentA(),
                check.withoutTrackerShare()));
    }
}
