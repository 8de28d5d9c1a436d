package wayside.sizing.ledger;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wayside.sizing.solar.sky.DailyClearness;

/** Seeds are fixed: a test either holds for ever or not. Bands are 4 standard errors, a false alarm in 16,000. */
class DayChainTest {
    private static final int RUNS = 20_000;
    private static final int DAYS = 20;

    // Source: Bendt, Collares-Pereira and Rabl, Solar Energy 27 (1981), by Herzog's form: the distribution's mean is
    // the month's mean. The error of a mean over n correlated days is s sqrt((1 + r) / (1 - r) / n).
    @ParameterizedTest
    @CsvSource({"0.3", "0.391", "0.5", "0.6", "0.7"})
    void reproducesTheMeanAndTheSpreadOfTheDistribution(double mean) {
        DailyClearness days = DailyClearness.unscaled(mean);
        double[] drawn = draw(days);
        double average = DoubleStream.of(drawn).average().orElseThrow();
        double spread = Math.sqrt(DoubleStream.of(drawn)
                .map(k -> (k - average) * (k - average))
                .average()
                .orElseThrow());
        double error = days.spread() * Math.sqrt(1.29 / 0.71 / drawn.length);
        assertThat(average).isCloseTo(mean, within(4 * error));
        // The kurtosis of these bounded shapes is below 3.5, so the error of the spread is below 0.8 s sqrt((1 + r2)/(1
        // - r2)/n).
        assertThat(spread).isCloseTo(days.spread(), within(4 * 0.8 * 1.1 * days.spread() / Math.sqrt(drawn.length)));
    }

    // Source: Graham, Hollands and Huget, Solar Energy 40 (1988), r = 0.29 (from memory), of the Gaussian chain. The
    // rank correlation of a Gaussian pair is 6/pi asin(r/2) = 0.278: the correlation of the shares.
    @Test
    void givesSuccessiveDaysThePublishedCorrelation() {
        double[] shares = shares();
        double products = 0;
        for (int i = 0; i < shares.length; i++) {
            if ((i + 1) % DAYS != 0) {
                products += 12 * (shares[i] - 0.5) * (shares[i + 1] - 0.5);
            }
        }
        double pairs = (double) RUNS * (DAYS - 1);
        assertThat(products / pairs).isCloseTo(6 / Math.PI * Math.asin(0.29 / 2), within(4 * 1.2 / Math.sqrt(pairs)));
    }

    @Test
    void drawsEveryShareAlikeOften() {
        int[] tenths = new int[10];
        double[] shares = shares();
        for (double share : shares) {
            tenths[(int) (10 * share)]++;
        }
        double expected = shares.length / 10.0;
        for (int count : tenths) {
            assertThat((double) count).isCloseTo(expected, within(4 * 1.3 * Math.sqrt(expected)));
        }
    }

    private static double[] draw(DailyClearness days) {
        return DoubleStream.of(shares()).map(days::quantile).toArray();
    }

    private static double[] shares() {
        double[] shares = new double[RUNS * DAYS];
        for (int run = 0; run < RUNS; run++) {
            DayChain chain = new DayChain(new RunRandom(7, run));
            for (int day = 0; day < DAYS; day++) {
                shares[run * DAYS + day] = chain.next();
            }
        }
        return shares;
    }
}
