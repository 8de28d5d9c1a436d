package wayside.sizing.solar.plane;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Angles against printed examples. */
class SunGeometryTest {
    private static final double[] MEAN_DAY_DECLINATION = {
        -20.9, -13.0, -2.4, 9.4, 18.8, 23.1, 21.2, 13.5, 2.2, -9.6, -18.9, -23.0
    };

    // Source: Duffie & Beckman, Solar Engineering of Thermal Processes, 5th ed., table 1.6.1 (after Klein 1977):
    // declination of the twelve mean days to 0.1 degree.
    @Test
    void declinationOfTheMeanDaysAgreesWithTheTable() {
        for (int month = 1; month <= 12; month++) {
            double degrees = Math.toDegrees(SunGeometry.cooperDeclination(SolarCalendar.meanDayOfYear(month)));
            assertThat(degrees).as("month %d", month).isCloseTo(MEAN_DAY_DECLINATION[month - 1], within(0.1));
        }
    }

    // Source: S. A. Klein, Solar Energy 19 (1977) 325-329: day numbers of the mean days.
    @Test
    void meanDaysAreKleins() {
        int[] days = {17, 47, 75, 105, 135, 162, 198, 228, 258, 288, 318, 344};
        for (int month = 1; month <= 12; month++) {
            assertThat(SolarCalendar.meanDayOfYear(month)).isEqualTo(days[month - 1]);
        }
    }

    // Source: Reda & Andreas, NREL/TP-560-34302, worked example: declination -9.31434 degrees on 17 October 2003.
    // Spencer's series has no year and no hour, and the declination moves 0.37 degree on such a day.
    @Test
    void spencerComesCloseToTheAlmanac() {
        double degrees = Math.toDegrees(SunGeometry.spencerDeclination(SolarCalendar.dayOfYear(10, 17)));
        assertThat(degrees).isCloseTo(-9.31, within(0.37));
    }

    // Source: Duffie & Beckman, example 1.6.1: latitude 43, 13 February, 10:30 solar time, tilt 45, facing 15 degrees
    // west of south; printed 35 degrees. Example 1.8.1: beam ratio 1.66.
    @Test
    void incidenceAgreesWithTheTextbook() {
        double phi = Math.toRadians(43);
        double delta = SunGeometry.cooperDeclination(SolarCalendar.dayOfYear(2, 13));
        double omega = Math.toRadians(-22.5);
        double cosI = SunGeometry.cosIncidence(phi, delta, omega, Plane.of(45, 195));
        assertThat(Math.toDegrees(Math.acos(cosI))).isCloseTo(35, within(0.5));
        assertThat(Transposition.beamRatio(SunGeometry.cosZenith(phi, delta, omega), cosI))
                .isCloseTo(1.66, within(0.005));
    }

    // Source: pvlib-python, tests of the incidence angle: wall facing north, sun at zenith 30; azimuth 60 gives a
    // projection of 0.25, azimuth 170 one of -0.4924038.
    @ParameterizedTest
    @CsvSource({"60, 0.25", "170, -0.4924038"})
    void projectionOnAWallAgrees(double sunAzimuthDegrees, double projection) {
        // A sun at zenith 30 seen from the pole: declination 60 is no real one, but geometry doesn't mind.
        double phi = Math.PI / 2;
        double delta = Math.toRadians(60);
        double omega = Math.toRadians(sunAzimuthDegrees) - Math.PI;
        double azimuth = SunGeometry.azimuth(phi, delta, omega);
        assertThat(Math.toDegrees(azimuth)).isCloseTo(sunAzimuthDegrees, within(1e-9));
        assertThat(SunGeometry.cosIncidence(phi, delta, omega, Plane.of(90, 0))).isCloseTo(projection, within(1e-6));
    }

    // Source: Bautista and others 2009 (20 N) and Mimikou & Baltas 2002 (46 N): monthly mean daylight hours, printed to
    // 0.1.
    @ParameterizedTest
    @CsvSource({
        "20, 10.9 11.3 11.9 12.5 12.9 13.2 13.1 12.7 12.1 11.5 11.0 10.8",
        "46, 8.9 10.1 11.6 13.3 14.7 15.5 15.2 13.9 12.3 10.7 9.2 8.5",
    })
    void daylightAgreesWithTheTables(double latitude, String printed) {
        String[] hours = printed.split(" ", -1);
        for (int month = 1; month <= 12; month++) {
            double n = SunGeometry.daylightHours(
                    Math.toRadians(latitude), SunGeometry.cooperDeclination(SolarCalendar.meanDayOfYear(month)));
            assertThat(n).as("month %d", month).isCloseTo(Double.parseDouble(hours[month - 1]), within(0.15));
        }
    }

    @Test
    void polarDayAndNightAreWholeDays() {
        double midsummer = SunGeometry.spencerDeclination(172);
        assertThat(SunGeometry.daylightHours(Math.toRadians(80), midsummer)).isEqualTo(24);
        assertThat(SunGeometry.daylightHours(Math.toRadians(-80), midsummer)).isZero();
        assertThat(SunGeometry.daylightHours(Math.PI / 2, midsummer)).isEqualTo(24);
        assertThat(SunGeometry.daylightHours(-Math.PI / 2, midsummer)).isZero();
    }

    @Test
    void theNoonSunStandsInTheSouthOfTheNorthAndInTheNorthOfTheSouth() {
        double delta = SunGeometry.spencerDeclination(80);
        assertThat(Math.toDegrees(SunGeometry.azimuth(Math.toRadians(45), delta, 0)))
                .isCloseTo(180, within(1e-9));
        assertThat(Math.toDegrees(SunGeometry.azimuth(Math.toRadians(-45), delta, 0)))
                .isCloseTo(0, within(1e-9));
        assertThat(Math.toDegrees(SunGeometry.azimuth(Math.toRadians(45), delta, -1)))
                .isBetween(90.0, 180.0);
    }
}
