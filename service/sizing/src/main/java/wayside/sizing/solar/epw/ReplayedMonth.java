package wayside.sizing.solar.epw;

import wayside.sizing.solar.ArrayModel;
import wayside.sizing.solar.CellTemperature;
import wayside.sizing.solar.IncidenceModifier;
import wayside.sizing.solar.MonthLight;
import wayside.sizing.solar.Plane;
import wayside.sizing.solar.SolarCalendar;
import wayside.sizing.trace.Formula;
import wayside.sizing.trace.Source;

/** What a month of a typical year makes of its light on a panel, hour by hour as the file has it. */
public final class ReplayedMonth {
    private static final int HOURS_A_DAY = 24;
    private static final Formula ON_PLANE = new Formula(
            "G = sum of the month's hours of the typical year, each onto the plane (b, A, rho)",
            Source.paper("Reindl, Beckman & Duffie, Solar Energy 45 (1990)", "HDKR"));

    private ReplayedMonth() {}

    /**
     * The month's light on an array.
     *
     * @param onPlane the same year on the array's own plane
     * @param month 1 to 12
     */
    public static MonthLight of(TypicalYear year, YearOnPlane onPlane, ArrayModel array, int month) {
        int first = HOURS_A_DAY * (SolarCalendar.dayOfYear(month, 1) - 1);
        int hours = HOURS_A_DAY * SolarCalendar.daysIn(month);
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
        return new MonthLight(
                horizontal > 0 ? plane / horizontal : panel.skyView(),
                plane > 0 ? entering / plane : IncidenceModifier.ofSky(Math.toDegrees(panel.tilt())),
                entering > 0 ? cells / entering : air,
                ON_PLANE);
    }
}
