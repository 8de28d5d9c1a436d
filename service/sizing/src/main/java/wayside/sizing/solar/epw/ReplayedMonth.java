package wayside.sizing.solar.epw;

import java.util.List;
import wayside.sizing.solar.array.ArrayModel;
import wayside.sizing.solar.array.CellTemperature;
import wayside.sizing.solar.array.MonthLight;
import wayside.sizing.solar.plane.IncidenceModifier;
import wayside.sizing.solar.plane.Plane;
import wayside.sizing.solar.plane.SolarCalendar;
import wayside.sizing.solar.sky.MonthAt;
import wayside.sizing.trace.NamedOperation;
import wayside.sizing.trace.Source;
import wayside.sizing.trace.Unit;

/** What a month of a typical year makes of its light on a panel, hour by hour as the file has it. */
public final class ReplayedMonth {
    private static final String DAYS = "The hours of the month in the typical year";
    private static final MonthLight.Method METHOD = new MonthLight.Method(
            NamedOperation.of(
                    NamedOperation.Kind.MONTH_INTEGRAL,
                    DAYS + ", each carried onto the plane: the light there over the light on the ground",
                    Source.paper("Reindl, Beckman & Duffie, Solar Energy 45 (1990)", "HDKR")),
            NamedOperation.of(
                    NamedOperation.Kind.MONTH_INTEGRAL,
                    DAYS
                            + ": of the light on the panel what enters the glass, the sun's, the sky's and the ground's each by"
                            + " its incidence-angle modifier",
                    Source.paper(
                            "De Soto, Klein & Beckman, Solar Energy 80 (2006)",
                            "Fresnel and Bouguer; sky and ground by Brandemuehl & Beckman 1980")),
            NamedOperation.of(
                    NamedOperation.Kind.MONTH_INTEGRAL,
                    DAYS + ": the mean of the file's air temperature + r G, each hour counting by the light that"
                            + " enters the glass",
                    Source.paper("Sandia National Laboratories SAND2004-3535", "eq. 11 and 12")));

    private ReplayedMonth() {}

    /**
     * The month's light on an array.
     *
     * @param onPlane the same year on the array's own plane
     * @param at the month, at the year's place
     */
    public static MonthLight of(TypicalYear year, YearOnPlane onPlane, ArrayModel array, MonthAt at) {
        int first = Unit.HOURS_PER_DAY * (SolarCalendar.dayOfYear(at.month(), 1) - 1);
        int hours = Unit.HOURS_PER_DAY * SolarCalendar.daysIn(at.month());
        double horizontal = 0;
        double plane = 0;
        double entering = 0;
        double cells = 0;
        double air = 0;
        for (int hour = first; hour < first + hours; hour++) {
            horizontal += year.globalWm2(hour);
            plane += onPlane.planeWm2(hour);
            entering += onPlane.enteringWm2(hour);
            air += year.airC(hour) / hours;
            cells += onPlane.enteringWm2(hour)
                    * CellTemperature.cellC(
                            year.airC(hour),
                            onPlane.planeWm2(hour),
                            array.riseKPerWm2().value());
        }
        Plane panel = array.position().plane();
        return METHOD.light(
                at,
                horizontal > 0 ? plane / horizontal : panel.skyView(),
                plane > 0 ? entering / plane : IncidenceModifier.ofSky(Math.toDegrees(panel.tilt())),
                entering > 0 ? cells / entering : air,
                MonthLight.inputs(at, array),
                List.of(array.riseKPerWm2().as("r")));
    }
}
