package wayside.sizing.ledger;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NormalTest {
    // Source: M. Abramowitz and I. A. Stegun, Handbook of Mathematical Functions, 1964, table 26.1, to eight of its
    // digits; eq. 26.2.17 promises an error below 7.5e-8.
    @ParameterizedTest
    @CsvSource({"0, 0.5", "0.5, 0.69146246", "1, 0.84134475", "2, 0.97724987", "3, 0.99865010", "-1, 0.15865525"})
    void agreesWithTheTableOfTheDistribution(double z, double phi) {
        assertThat(Normal.cumulative(z)).isCloseTo(phi, within(8e-8));
    }

    // Source: M. J. Wichura, Algorithm AS 241, Applied Statistics 37 (1988): PPND7 at 0.25, 0.001 and 1e-20, its
    // printed check values -0.6744897501960817, -3.090232306167814 and -9.262340089798408; about one part in ten
    // millions.
    @ParameterizedTest
    @CsvSource({"0.25, -0.67448975", "0.001, -3.09023231", "1e-20, -9.26234009"})
    void agreesWithTheCheckValuesOfTheAlgorithm(double share, double z) {
        assertThat(Normal.quantile(share)).isCloseTo(z, within(1e-6));
    }

    @Test
    void isItsOwnInverse() {
        for (int i = 1; i < 1000; i++) {
            assertThat(Normal.cumulative(Normal.quantile(i / 1000.0))).isCloseTo(i / 1000.0, within(2e-7));
        }
    }
}
