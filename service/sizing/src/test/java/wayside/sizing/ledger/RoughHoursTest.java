package wayside.sizing.ledger;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wayside.sizing.solar.epw.HourlyStations;
import wayside.sizing.solar.epw.HourlyStations.Station;
import wayside.sizing.solar.epw.TypicalYear;
import wayside.sizing.solar.plane.Extraterrestrial;
import wayside.sizing.solar.plane.HourlySplit;
import wayside.sizing.solar.plane.SunGeometry;
import wayside.sizing.trace.Unit;

/** How rough the hours of a day are, drawn and real. */
class RoughHoursTest {
    /** Hours near dawn and dusk are left out: clock and horizon rule there. */
    private static final double LEAST_SHARE = 0.06;

    // Source: hours of 29 stations, NREL TMY3 (2008): relative standard deviation of an hour's light about the smooth
    // day
    // of the same light, each hour counting by its light. 0.07: an hour of the clock is not quite the smooth day's, and
    // between more stations and the model 0.02 were found.
    @ParameterizedTest
    @CsvSource({"0.2, 0.35", "0.35, 0.45", "0.45, 0.55", "0.55, 0.65", "0.65, 0.75"})
    void areAsRoughAsRealOnes(double fromK, double untilK) {
        double[] sums = new double[3];
        RoughHours drawn = new RoughHours(RunRandom.ofHours(3, 0));
        for (Station station : HourlyStations.all()) {
            for (int n = 1; n <= 365; n++) {
                addDay(station.year(), n, fromK, untilK, drawn, sums);
            }
        }
        double real = Math.sqrt(sums[0] / sums[1]);
        assertThat(sums[1]).isGreaterThan(100);
        assertThat(Math.sqrt(sums[2] / sums[1])).isCloseTo(real, within(0.07));
    }

    @Test
    void theQuotientIsNearlyTheExponential() {
        for (double y = -1.6; y <= 1.6; y += 0.05) {
            double error = Math.abs(y) < 0.8 ? 0.001 : 0.02;
            assertThat(RoughHours.nearlyExp(y)).isCloseTo(Math.exp(y), within(error * Math.exp(y)));
        }
    }

    private static void addDay(TypicalYear year, int n, double fromK, double untilK, RoughHours drawn, double[] sums) {
        double phi = Math.toRadians(year.place().latitude());
        double delta = SunGeometry.spencerDeclination(n);
        double ws = SunGeometry.sunsetHourAngle(phi, delta);
        double[] smooth = new double[Unit.HOURS_PER_DAY];
        double light = 0;
        for (int hour = 0; hour < smooth.length; hour++) {
            int ofYear = (n - 1) * Unit.HOURS_PER_DAY + hour;
            smooth[hour] = HourlySplit.globalShare(year.hourAngle(ofYear), ws);
            light += year.globalWm2(ofYear);
        }
        double k = light / 1000 / Extraterrestrial.dailyKwhM2(phi, delta, Extraterrestrial.spencerNormalWm2(n));
        if (k < fromK || k >= untilK) {
            return;
        }
        double whole = Arrays.stream(smooth).sum();
        double[] rough = drawn.next(k, 0, smooth.length);
        double roughWhole = 0;
        for (int hour = 0; hour < smooth.length; hour++) {
            smooth[hour] /= whole;
            roughWhole += smooth[hour] * rough[hour];
        }
        for (int hour = 0; hour < smooth.length; hour++) {
            if (smooth[hour] > LEAST_SHARE) {
                double real = year.globalWm2((n - 1) * Unit.HOURS_PER_DAY + hour) / light / smooth[hour] - 1;
                double model = rough[hour] / roughWhole - 1;
                sums[0] += smooth[hour] * real * real;
                sums[1] += smooth[hour];
                sums[2] += smooth[hour] * model * model;
            }
        }
    }
}
