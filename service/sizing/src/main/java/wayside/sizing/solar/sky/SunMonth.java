package wayside.sizing.solar.sky;

import java.time.LocalDate;
import net.e175.klaus.solarpositioning.SunriseResult;
import wayside.sizing.solar.plane.SolarCalendar;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Input;
import wayside.sizing.trace.NamedOperation;
import wayside.sizing.trace.Source;
import wayside.sizing.trace.Unit;

/**
 * What a reader is told of the sun in a month: on its mean day.
 *
 * @param daylightHours from sunrise to sunset [h]
 * @param noonAltitudeDegrees above the horizon [deg], negative in polar night
 */
public record SunMonth(Derived daylightHours, Derived noonAltitudeDegrees) {
    /** A common year in the middle of its leap cycle; another year moves sunrise by less than a minute. */
    private static final int YEAR = 2026;

    private static final Source SPA =
            Source.paper("Reda & Andreas, Solar position algorithm, NREL/TP-560-34302", "mean day after Klein 1977");
    private static final NamedOperation DAYLIGHT = NamedOperation.of(
            NamedOperation.Kind.SOLAR_POSITION,
            "From sunrise to sunset of the month's mean day, the upper limb at -0.833 degrees",
            SPA);
    private static final NamedOperation NOON = NamedOperation.of(
            NamedOperation.Kind.SOLAR_POSITION,
            "90 degrees less the zenith angle of the sun's centre at its transit on the month's mean day, without refraction",
            SPA);

    /** The month's mean day at a place. */
    public static SunMonth of(MonthAt at) {
        LocalDate date = LocalDate.ofYearDay(YEAR, SolarCalendar.meanDayOfYear(at.month()));
        SunriseResult day = Almanac.day(date, at.place());
        Input[] inputs = {
            at.latitudeDegrees().as("L"),
            at.longitudeDegrees().as("lambda"),
            at.monthOfYear().as("month")
        };
        return new SunMonth(
                DAYLIGHT.value(
                        at.label() + ": daylight on the mean day", Almanac.daylightHours(day), Unit.HOUR, inputs),
                NOON.value(
                        at.label() + ": height of the sun at noon of the mean day",
                        Almanac.noonAltitudeDegrees(day, at.place()),
                        Unit.DEGREE,
                        inputs));
    }
}
