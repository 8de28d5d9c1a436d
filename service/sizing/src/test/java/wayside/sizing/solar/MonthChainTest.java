package wayside.sizing.solar;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import wayside.sizing.solar.plane.Plane;
import wayside.sizing.solar.sky.DailyClearness;

/** What the few days of the whole-month chain cost against very many: arithmetic, no source. */
class MonthChainTest {
    private static final double[] CLEARNESS = {0.3, 0.45, 0.6, 0.7};
    /** Share of Bendt's spread that daily sequences show: 0.82. */
    private static final double SPREAD = 0.82;

    private static double error(double latitude, int month, double clearness, double tilt) {
        DailyClearness days = DailyClearness.scaled(
                clearness, SPREAD * DailyClearness.unscaled(clearness).spread());
        Plane plane = Plane.of(tilt, latitude < 0 ? 0 : 180);
        return MonthChain.planeRatio(latitude, month, days, plane, 7, 3)
                        / MonthChain.planeRatio(latitude, month, days, plane, 51, 28)
                - 1;
    }

    private static List<Double> errors(double tilt) {
        List<Double> errors = new ArrayList<>();
        for (int latitude = -60; latitude <= 60; latitude += 20) {
            for (int month = 1; month <= 12; month++) {
                for (double clearness : CLEARNESS) {
                    errors.add(error(latitude, month, clearness, tilt));
                }
            }
        }
        return errors;
    }

    @Test
    void sevenKindsOfDayOnThreeDatesStandForTheMonth() {
        List<Double> errors = errors(30);
        assertThat(errors).allSatisfy(error -> assertThat(error).isCloseTo(0, within(0.02)));
        double rms = Math.sqrt(errors.stream().mapToDouble(e -> e * e).average().orElseThrow());
        assertThat(rms).isLessThan(0.004);
    }

    @Test
    void evenOnAWallTheyMissByLittle() {
        assertThat(errors(90)).allSatisfy(error -> assertThat(error).isCloseTo(0, within(0.045)));
    }
}
