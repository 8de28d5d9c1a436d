package wayside.sizing.yield;

import java.time.Month;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import wayside.sizing.brief.Ambient;
import wayside.sizing.brief.At;
import wayside.sizing.brief.MonthWish;
import wayside.sizing.brief.Sky;
import wayside.sizing.brief.SolarYieldBrief;
import wayside.sizing.solar.PanelTilt;
import wayside.sizing.solar.SolarMonth;
import wayside.sizing.solar.array.ArrayModel;
import wayside.sizing.solar.array.MonthLight;
import wayside.sizing.solar.epw.ReplayedMonth;
import wayside.sizing.solar.epw.TypicalMonth;
import wayside.sizing.solar.epw.TypicalYear;
import wayside.sizing.solar.epw.YearOnPlane;
import wayside.sizing.solar.plane.Hdkr;
import wayside.sizing.solar.plane.SolarCalendar;
import wayside.sizing.solar.sky.MonthAt;
import wayside.sizing.solar.sky.SkyMonth;
import wayside.sizing.solar.sky.SunMonth;
import wayside.sizing.trace.Derived;

/** The months of a solar yield, under one sky or another. */
final class YieldMonths {
    private YieldMonths() {}

    /** Under the sky that the brief gives, or the climatology of its place. */
    static List<YieldMonth> of(SolarYieldBrief brief, Derived powerW) {
        ArrayModel array = array(brief);
        List<YieldMonth> months = new ArrayList<>();
        for (MonthAt at : asked(brief)) {
            months.add(month(at, SolarMonth.of(at, array), powerW));
        }
        return months;
    }

    /** In the hours of a typical year at the brief's place. */
    static List<YieldMonth> of(SolarYieldBrief brief, TypicalYear year, Derived powerW) {
        ArrayModel array = array(brief);
        YearOnPlane onPlane = YearOnPlane.of(
                year, array.position().plane(), Hdkr.MODEL, array.albedo().value());
        List<YieldMonth> months = new ArrayList<>();
        for (MonthAt open : asked(brief)) {
            MonthAt at = typical(open, TypicalMonth.of(year, open.month()));
            MonthLight light = ReplayedMonth.of(year, onPlane, array, at);
            months.add(month(at, SolarMonth.of(at, SkyMonth.of(at), array, light), powerW));
        }
        return months;
    }

    private static ArrayModel array(SolarYieldBrief brief) {
        return ArrayModel.of(brief.panel(), brief.place().latitude());
    }

    private static MonthAt typical(MonthAt open, TypicalMonth typical) {
        Optional<Sky> sky = Optional.of(typical.sky(At.TYPICAL_YEAR));
        Optional<Ambient> ambient = Optional.of(typical.ambient(At.TYPICAL_YEAR));
        return new MonthAt(At.TYPICAL_YEAR, open.place(), open.month(), sky, ambient, open.label());
    }

    private static List<MonthAt> asked(SolarYieldBrief brief) {
        if (brief.months().isEmpty()) {
            return IntStream.rangeClosed(1, SolarCalendar.MONTHS)
                    .mapToObj(month ->
                            at(brief, MonthWish.of(brief.at().field("months").entry(month - 1), month)))
                    .toList();
        }
        return brief.months().stream().map(wish -> at(brief, wish)).toList();
    }

    private static MonthAt at(SolarYieldBrief brief, MonthWish wish) {
        String name = Month.of(wish.month()).getDisplayName(TextStyle.FULL, Locale.ENGLISH);
        return new MonthAt(wish.at(), brief.place(), wish.month(), wish.sky(), wish.ambient(), name);
    }

    private static YieldMonth month(MonthAt at, SolarMonth solar, Derived powerW) {
        Derived yield = solar.dailyWh(at.label() + ": yield of the mean day", powerW);
        YieldRange range = YieldRange.of(at, solar, yield);
        return new YieldMonth(
                at.month(), solar, SunMonth.of(at), PanelTilt.of(at, solar), yield, range.lowWh(), range.highWh());
    }
}
