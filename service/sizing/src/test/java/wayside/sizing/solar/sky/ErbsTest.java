package wayside.sizing.solar.sky;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wayside.sizing.solar.plane.Extraterrestrial;
import wayside.sizing.solar.plane.SolarCalendar;
import wayside.sizing.solar.plane.SunGeometry;

/** The diffuse share against printed examples. */
class ErbsTest {
    // Source: pvlib-python, tests of its Erbs function: global 50 at zenith 85 and 1000 at zenith 10, 1 January and 20
    // June 2019; clearness and diffuse as printed there.
    @ParameterizedTest
    @CsvSource({"0.4057, 50, 41.57", "0.7181, 1000, 217.86", "0.7682, 1000, 170.79"})
    void hourAgreesWithASecondImplementation(double kt, double globalWm2, double diffuseWm2) {
        // Clearness is printed to four digits; at 0.77 the share changes by 4 in 10,000 per digit.
        assertThat(Erbs.hourly(kt) * globalWm2).isCloseTo(diffuseWm2, within(0.1));
    }

    // Source: Duffie & Beckman, 5th ed., example 2.11.1: latitude 38.6, 3 September, 23 MJ/m2; recomputed H0 33.25, KT
    // 0.692, share 0.253.
    @Test
    void dayAgreesWithTheTextbook() {
        int n = SolarCalendar.dayOfYear(9, 3);
        double phi = Math.toRadians(38.6);
        double delta = SunGeometry.cooperDeclination(n);
        double h0 = Extraterrestrial.dailyKwhM2(phi, delta, Extraterrestrial.cosineNormalWm2(n)) * 3.6;
        assertThat(h0).isCloseTo(33.25, within(0.02));
        assertThat(Erbs.daily(23 / h0, SunGeometry.sunsetHourAngle(phi, delta))).isCloseTo(0.253, within(0.001));
    }

    // Source: Duffie & Beckman, 5th ed., example 2.12.1: latitude 43, June, 23 MJ/m2; recomputed H0 41.78, KT 0.5505,
    // share 0.382.
    @Test
    void monthAgreesWithTheTextbook() {
        int n = SolarCalendar.meanDayOfYear(6);
        double ws = SunGeometry.sunsetHourAngle(Math.toRadians(43), SunGeometry.cooperDeclination(n));
        assertThat(Erbs.monthly(0.5505, ws)).isCloseTo(0.382, within(0.0005));
    }

    @Test
    void sharesStayBetweenNothingAndAll() {
        for (double kt = 0; kt <= 1.2; kt += 0.001) {
            assertThat(Erbs.hourly(kt)).isBetween(0.13, 1.0);
            assertThat(Erbs.daily(kt, 1)).isBetween(0.13, 1.0);
            assertThat(Erbs.daily(kt, 2)).isBetween(0.13, 1.01);
            assertThat(Erbs.monthly(kt, 1)).isBetween(0.1, 1.0);
            assertThat(Erbs.monthly(kt, 2)).isBetween(0.1, 1.0);
        }
    }
}
