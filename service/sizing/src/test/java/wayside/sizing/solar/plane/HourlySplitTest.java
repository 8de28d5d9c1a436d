package wayside.sizing.solar.plane;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The hours of a day against the textbook's examples. */
class HourlySplitTest {
    private static double ws(double latitude, int n) {
        return SunGeometry.sunsetHourAngle(Math.toRadians(latitude), SunGeometry.cooperDeclination(n));
    }

    // Source: Duffie & Beckman, 5th ed., example 2.13.1: 38 south, mean day of January, 8 to 9 h; printed rt 0.076.
    @Test
    void globalShareAgreesWithTheTextbook() {
        assertThat(HourlySplit.globalShare(SunGeometry.hourAngle(8), ws(-38, 17)))
                .isCloseTo(0.076, within(0.0005));
    }

    // Source: Duffie & Beckman, 5th ed., example 2.13.3: latitude 43, mean day of June, 10 to 11 and 13 to 14 h, 23
    // MJ/m2 a day of which the diffuse share is 0.382; recomputed rt 0.1085, rd 0.1015, 2.49 MJ in all, 0.89 diffuse,
    // 1.60 beam.
    @ParameterizedTest
    @CsvSource({"10", "13"})
    void splitOfAnHourAgreesWithTheTextbook(int hour) {
        double ws = ws(43, 162);
        double rt = HourlySplit.globalShare(SunGeometry.hourAngle(hour), ws);
        double rd = HourlySplit.diffuseShare(SunGeometry.hourAngle(hour), ws);
        assertThat(rt).isCloseTo(0.1085, within(0.0001));
        assertThat(rd).isCloseTo(0.1015, within(0.0001));
        assertThat(23 * rt).isCloseTo(2.49, within(0.01));
        assertThat(23 * 0.382 * rd).isCloseTo(0.89, within(0.01));
    }

    // Source: recomputed from Collares-Pereira & Rabl 1979: raw sums over the hour middles 1.0016, 1.0280 and 0.9936.
    // They are why the filled arrays are scaled.
    @ParameterizedTest
    @CsvSource({"43, 162, 1.0016", "60, 344, 1.0280", "0, 75, 0.9936"})
    void rawSharesMissOneButFilledOnesDoNot(double latitude, int n, double rawSum) {
        double ws = ws(latitude, n);
        double sum = 0;
        for (int hour = 0; hour < 24; hour++) {
            sum += HourlySplit.globalShare(SunGeometry.hourAngle(hour), ws);
        }
        assertThat(sum).isCloseTo(rawSum, within(1e-3));
        double[] shares = new double[24];
        HourlySplit.fillGlobal(ws, shares);
        assertThat(Arrays.stream(shares).sum()).isCloseTo(1, within(1e-12));
    }

    @Test
    void sharesSumToOneOnEveryDayThatHasSunAndAreNeverNegative() {
        double[] global = new double[24];
        double[] diffuse = new double[24];
        for (double ws = 0; ws <= Math.PI; ws += 0.003) {
            HourlySplit.fillGlobal(ws, global);
            HourlySplit.fillDiffuse(ws, diffuse);
            assertThat(Arrays.stream(global).sum()).isCloseTo(ws > 0 ? 1 : 0, within(1e-12));
            assertThat(Arrays.stream(diffuse).sum()).isCloseTo(ws > 0 ? 1 : 0, within(1e-12));
            assertThat(Arrays.stream(global).min().orElseThrow()).isNotNegative();
        }
    }
}
