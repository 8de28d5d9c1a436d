package wayside.sizing.yield;

import wayside.sizing.solar.MonthAt;
import wayside.sizing.solar.SkyMonth;
import wayside.sizing.solar.SolarCalendar;
import wayside.sizing.solar.SolarMonth;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Formula;
import wayside.sizing.trace.Source;
import wayside.sizing.trace.Unit;

/**
 * The range that a month's yield lies in, eight times of ten: the sky's own uncertainty, the year's scatter and the error of
 * the way onto a tilted plane, as independent errors.
 */
record YieldRange(Derived lowWh, Derived highWh) {
    /** Eight of ten normally distributed errors lie within this many standard deviations. */
    private static final double EIGHT_OF_TEN = 1.2816;

    private static final double YEARS_SCATTER = 0.10;
    private static final Source CHECK = Source.dataset(
            "Typical-year stations: NREL TMY3 2008, UNEP/NREL SWERA and others", "160 stations by 12 months, tilt 30");
    private static final Source NEIGHBOURS = Source.dataset(
            "NREL TMY3 2008", "neighbouring stations whose typical months come from different years: 9 to 11 %");
    private static final String LENGTH = "1.28 sqrt(((Hh - Hl) / (2.56 H))^2 + s^2 + c^2)";

    static YieldRange of(MonthAt at, SolarMonth month, Derived yield) {
        Derived scatter = Derived.convention("scatter of a month from year to year", YEARS_SCATTER, Unit.SHARE, "Mean of what typical years show", NEIGHBOURS);
        Derived plane = Derived.convention(
                at.label() + ": error of the way onto the plane, rms",
                planeError(at, month),
                Unit.SHARE,
                "None when flat; largest on tilted panels in northern winters, where snow and haze scatter light",
                CHECK);
        double reach = reach(month.sky(), scatter, plane);
        return new YieldRange(
                edge(
                        at.label() + ": yield, low end of eight in ten",
                        "y (1 - r)",
                        month,
                        yield,
                        scatter,
                        plane,
                        -reach),
                edge(
                        at.label() + ": yield, high end of eight in ten",
                        "y (1 + r)",
                        month,
                        yield,
                        scatter,
                        plane,
                        reach));
    }

    private static double reach(SkyMonth sky, Derived scatter, Derived plane) {
        double horizontal = sky.horizontalKwhM2().value();
        double width = sky.highKwhM2().value() - sky.lowKwhM2().value();
        double table = horizontal > 0 ? width / (2 * EIGHT_OF_TEN * horizontal) : 0;
        return EIGHT_OF_TEN
                * Math.sqrt(table * table + scatter.value() * scatter.value() + plane.value() * plane.value());
    }

    private static Derived edge(
            String label, String text, SolarMonth month, Derived yield, Derived scatter, Derived plane, double reach) {
        return Derived.computed(
                label,
                Math.max(0, yield.value() * (1 + reach)),
                Unit.WATT_HOUR,
                new Formula(text + ", r = " + LENGTH, CHECK),
                yield.as("y"),
                month.sky().lowKwhM2().as("Hl"),
                month.sky().highKwhM2().as("Hh"),
                month.horizontalKwhM2().as("H"),
                scatter.as("s"),
                plane.as("c"));
    }

    private static double planeError(MonthAt at, SolarMonth month) {
        if (month.array().position().plane().isHorizontal()) {
            return 0;
        }
        double north = Math.abs(at.place().latitude());
        if (north < 42) {
            return 0.027;
        }
        int season = SolarCalendar.northernMonth(at.place().latitude(), at.month());
        return season >= 11 || season <= 2 ? 0.081 : 0.017;
    }
}
