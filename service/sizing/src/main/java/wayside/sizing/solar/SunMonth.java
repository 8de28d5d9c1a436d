package wayside.sizing.solar;

import java.time.LocalDate;
import net.e175.klaus.solarpositioning.SunriseResult;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Formula;
import wayside.sizing.trace.Input;
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

    /** The month's mean day at a place. */
    public static SunMonth of(MonthAt at) {
        LocalDate date = LocalDate.ofYearDay(YEAR, SolarCalendar.meanDayOfYear(at.month()));
        SunriseResult day = Almanac.day(date, at.place());
        Input[] inputs = {
            Derived.given(at.label() + ": latitude", at.place().latitude(), Unit.DEGREE, at.place().at("latitude"))
                    .as("L"),
            Derived.given(at.label() + ": month", at.month(), Unit.COUNT, at.at("month"))
                    .as("month")
        };
        return new SunMonth(
                Derived.computed(
                        at.label() + ": daylight on the mean day",
                        Almanac.daylightHours(day),
                        Unit.HOUR,
                        new Formula("from sunrise to sunset, upper limb at -0.833 degrees", SPA),
                        inputs),
                Derived.computed(
                        at.label() + ": height of the sun at noon of the mean day",
                        Almanac.noonAltitudeDegrees(day, at.place()),
                        Unit.DEGREE,
                        new Formula("90 - zenith angle at transit", SPA),
                        inputs));
    }
}
