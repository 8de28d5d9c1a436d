package wayside.sizing.solar.sky;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The distribution of days against recomputed figures of the published formula. */
class DailyClearnessTest {
    // Source: Bendt and others 1981 with the explicit exponent, Duffie & Beckman, 5th ed., eq. 2.9.4 to 2.9.7,
    // recomputed.
    @ParameterizedTest
    @CsvSource({"0.45, 1.2632, 0.1466, 0.3907, 0.7049", "0.55, 3.3812, 0.0616, 0.2112, 0.5054"})
    void cumulativeAgrees(double mean, double exponent, double at2, double at4, double at6) {
        DailyClearness days = DailyClearness.unscaled(mean);
        assertThat(days.exponent()).isCloseTo(exponent, within(1e-4));
        assertThat(days.cumulative(0.2)).isCloseTo(at2, within(1e-4));
        assertThat(days.cumulative(0.4)).isCloseTo(at4, within(1e-4));
        assertThat(days.cumulative(0.6)).isCloseTo(at6, within(1e-4));
    }

    // Source: as above, recomputed: standard deviation and 10 % quantile. The quantile here has the error of the mean,
    // up to 0.002, added back.
    @ParameterizedTest
    @CsvSource({"0.3, 0.177, 0.087", "0.4, 0.198, 0.123", "0.5, 0.193, 0.202", "0.6, 0.167, 0.346", "0.7, 0.114, 0.549"
    })
    void spreadAndQuantileAgree(double mean, double spread, double tenth) {
        DailyClearness days = DailyClearness.unscaled(mean);
        assertThat(days.spread()).isCloseTo(spread, within(0.0006));
        assertThat(days.quantile(0.1)).isCloseTo(tenth, within(0.003));
    }

    @Test
    void meanAndSpreadOfTheQuantilesAreThoseAskedFor() {
        for (double mean = 0.02; mean < 0.88; mean += 0.007) {
            for (double spread : new double[] {0, 0.05, 0.12, 1}) {
                DailyClearness days = DailyClearness.scaled(mean, spread);
                int n = 20_000;
                double sum = 0;
                double squares = 0;
                for (int i = 0; i < n; i++) {
                    double k = days.quantile((i + 0.5) / n);
                    assertThat(k).isBetween(0.0, 0.9);
                    sum += k;
                    squares += (k - mean) * (k - mean);
                }
                assertThat(sum / n).as("mean %s", mean).isCloseTo(mean, within(1e-5));
                assertThat(Math.sqrt(squares / n)).isCloseTo(days.spread(), within(2e-4));
                assertThat(days.spread()).isLessThanOrEqualTo(spread + 1e-12);
            }
        }
    }

    // The exponent passes zero near a mean of 0.39, where the formula divides by it.
    @Test
    void nothingHappensWhereTheExponentPassesZero() {
        double below = DailyClearness.unscaled(0.390).quantile(0.3);
        for (double mean = 0.390; mean < 0.392; mean += 1e-7) {
            double k = DailyClearness.unscaled(mean).quantile(0.3);
            assertThat(k).isCloseTo(below, within(2e-5));
            below = k;
        }
    }
}
