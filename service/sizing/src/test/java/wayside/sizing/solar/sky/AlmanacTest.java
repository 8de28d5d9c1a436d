package wayside.sizing.solar.sky;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.util.Optional;
import java.util.OptionalDouble;
import net.e175.klaus.solarpositioning.SunriseResult;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wayside.sizing.brief.At;
import wayside.sizing.brief.Place;
import wayside.sizing.solar.plane.SunGeometry;

/** The almanac against the paper of its algorithm and against published sunrise tables. */
class AlmanacTest {
    private static final Place GOLDEN = new Place(39.742476, -105.1786, OptionalDouble.of(1830.14));

    private static SunriseResult.RegularDay regular(LocalDate date, Place place) {
        return (SunriseResult.RegularDay) Almanac.day(date, place);
    }

    private static void assertClock(ZonedDateTime actual, ZoneOffset zone, String printed, int seconds) {
        LocalTime time = actual.withZoneSameInstant(zone).toLocalTime();
        assertThat(Math.abs(Duration.between(LocalTime.parse(printed), time).toSeconds()))
                .as("%s against %s", time, printed)
                .isLessThanOrEqualTo(seconds);
    }

    // Source: Reda & Andreas, NREL/TP-560-34302, worked example: 17 October 2003, 12:30:30, UTC-7, 820 hPa, 11 C, delta
    // T 67 s; printed zenith 50.11162, azimuth 194.34024.
    @Test
    void agreesWithThePaperExample() {
        ZonedDateTime when = ZonedDateTime.of(2003, 10, 17, 12, 30, 30, 0, ZoneOffset.ofHours(-7));
        Almanac.Position sun = Almanac.position(when, GOLDEN, 67, 820, 11);
        assertThat(sun.zenithDegrees()).isCloseTo(50.11162, within(0.000005));
        assertThat(sun.azimuthDegrees()).isCloseTo(194.34024, within(0.000005));
    }

    // Source: as above; sunrise 06:12:43 and transit 11:46:05 of the local 17 October. The printed sunset of 17:20:19
    // is that of the UT day, the local evening of the 16th; on the local 17th the zenith passes 90.8333 degrees at
    // 17:18:51.
    @Test
    void sunsetIsThatOfTheLocalDay() {
        ZoneOffset mountain = ZoneOffset.ofHours(-7);
        SunriseResult.RegularDay day = regular(LocalDate.of(2003, 10, 17), GOLDEN);
        assertClock(day.sunrise(), mountain, "06:12:43", 35);
        assertClock(day.transit(), mountain, "11:46:05", 35);
        assertClock(day.sunset(), mountain, "17:18:51", 10);
        assertClock(regular(LocalDate.of(2003, 10, 16), GOLDEN).sunset(), mountain, "17:20:19", 10);
    }

    // Source: NREL/TP-560-34302, table A2.1, to 2 s.
    @ParameterizedTest
    @CsvSource({
        "-35, 1996-07-05, 07:08:15, 17:01:04",
        "-35, 2004-12-04, 04:38:57, 19:02:02",
        "35, 1994-01-02, 07:08:12, 16:59:55",
    })
    void agreesWithThePapersTable(double latitude, LocalDate date, String sunrise, String sunset) {
        SunriseResult.RegularDay day = regular(date, Place.of(latitude, 0));
        assertClock(day.sunrise(), ZoneOffset.UTC, sunrise, 2);
        assertClock(day.sunset(), ZoneOffset.UTC, sunset, 2);
    }

    // Source: U.S. Naval Observatory, tables of sunrise and sunset, 39 N 105 W, printed to the minute.
    @ParameterizedTest
    @CsvSource({"2015-01-02, 07:19, 16:49", "2015-04-02, 05:43, 18:24"})
    void agreesWithTheNavalObservatory(LocalDate date, String sunrise, String sunset) {
        SunriseResult.RegularDay day = regular(date, Place.of(39, -105));
        assertClock(day.sunrise(), ZoneOffset.ofHours(-7), sunrise, 60);
        assertClock(day.sunset(), ZoneOffset.ofHours(-7), sunset, 60);
    }

    // Source: SPA at 70.978 N 25.975 E: the sun doesn't set on 17 June 2015 and doesn't rise on 17 January 2015.
    @Test
    void polarDayAndNightAreTold() {
        Place northCape = Place.of(70.978056, 25.974722);
        assertThat(Almanac.daylightHours(Almanac.day(LocalDate.of(2015, 6, 17), northCape)))
                .isEqualTo(24);
        SunriseResult night = Almanac.day(LocalDate.of(2015, 1, 17), northCape);
        assertThat(Almanac.daylightHours(night)).isZero();
        assertThat(Almanac.noonAltitudeDegrees(night, northCape)).isBetween(-3.0, 0.0);
    }

    // Source: U.S. Naval Observatory, daylight hours at 34.083 N by month, mean of the month, printed in minutes.
    @Test
    void daylightAgreesWithTheNavalObservatory() {
        double[] printed = {
            10.182, 10.973, 11.985, 13.046, 13.940, 14.388, 14.163, 13.404, 12.374, 11.320, 10.401, 9.928
        };
        for (int month = 1; month <= 12; month++) {
            MonthAt at =
                    new MonthAt(At.ROOT, Place.of(34.083, -118), month, Optional.empty(), Optional.empty(), "month");
            assertThat(SunMonth.of(at).daylightHours().value()).isCloseTo(printed[month - 1], within(0.1));
        }
    }

    // Source: geometry: at noon the sun stands at 90 - |latitude - declination|. Spencer's short form has no leap years
    // and no hours; the declination moves by up to 0.4 degree a day and the leap cycle shifts it by up to 0.75 day.
    @Test
    void theShortFormsKeepUpWithTheAlmanac() {
        Place place = Place.of(50, 0);
        for (int month = 1; month <= 12; month++) {
            LocalDate date = LocalDate.of(2026, month, 15);
            double exact = Almanac.noonAltitudeDegrees(Almanac.day(date, place), place);
            double declination = Math.toDegrees(SunGeometry.spencerDeclination(date.getDayOfYear()));
            assertThat(exact).isCloseTo(90 - 50 + declination, within(1.75 * 0.4));
        }
    }

    @Test
    void theDateLineHasItsOwnNoon() {
        for (double longitude : new double[] {-180, -172.6, 172.6, 180}) {
            Place place = Place.of(0, longitude);
            assertThat(Almanac.daylightHours(Almanac.day(LocalDate.of(2026, 3, 16), place)))
                    .isCloseTo(12.12, within(0.02));
        }
    }
}
