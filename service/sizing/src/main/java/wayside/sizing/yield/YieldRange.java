package wayside.sizing.yield;

import wayside.sizing.solar.SolarMonth;
import wayside.sizing.solar.plane.SolarCalendar;
import wayside.sizing.solar.sky.MonthAt;
import wayside.sizing.solar.sky.SkyMonth;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Expression;
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
    private static final Expression SKY_ERROR =
            Expression.definition("t = (Hh - Hl) / (2 z H)").with("z", EIGHT_OF_TEN, Unit.COUNT);
    private static final Expression SKY_ERROR_OF_NO_SUN = Expression.definition("t = 0");
    private static final Expression REACH =
            Expression.of("r = z sqrt(t^2 + s^2 + c^2)", CHECK).with("z", EIGHT_OF_TEN, Unit.COUNT);
    private static final Expression LOW = Expression.of("y_low = max(0, y (1 - r))", CHECK);
    private static final Expression HIGH = Expression.of("y_high = y (1 + r)", CHECK);

    static YieldRange of(MonthAt at, SolarMonth month, Derived yield) {
        Derived scatter = Derived.convention(
                "scatter of a month from year to year",
                YEARS_SCATTER,
                Unit.SHARE,
                "Mean of what typical years show",
                NEIGHBOURS);
        Derived plane = Derived.convention(
                at.label() + ": error of the way onto the plane, rms",
                planeError(at, month),
                Unit.SHARE,
                "None when flat; largest on tilted panels in northern winters, where snow and haze scatter light",
                CHECK);
        Derived reach = REACH.value(
                at.label() + ": reach of eight in ten",
                Unit.SHARE,
                skyError(at, month.sky()).as("t"),
                scatter.as("s"),
                plane.as("c"));
        return new YieldRange(
                LOW.value(
                        at.label() + ": yield, low end of eight in ten", Unit.WATT_HOUR, yield.as("y"), reach.as("r")),
                HIGH.value(
                        at.label() + ": yield, high end of eight in ten",
                        Unit.WATT_HOUR,
                        yield.as("y"),
                        reach.as("r")));
    }

    private static Derived skyError(MonthAt at, SkyMonth sky) {
        String label = at.label() + ": error of the sky, rms";
        return sky.horizontalKwhM2().value() > 0
                ? SKY_ERROR.value(
                        label,
                        Unit.SHARE,
                        sky.highKwhM2().as("Hh"),
                        sky.lowKwhM2().as("Hl"),
                        sky.horizontalKwhM2().as("H"))
                : SKY_ERROR_OF_NO_SUN.value(label, Unit.SHARE);
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
