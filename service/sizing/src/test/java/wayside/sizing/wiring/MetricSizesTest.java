package wayside.sizing.wiring;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MetricSizesTest {
    // Source: ASTM B258 areas (14 AWG 2.08, 6 AWG 13.3, 2 AWG 33.6, 1 AWG 42.4, 2/0 67.4, 4/0 107 mm2): the gauge that
    // a metric size may be rated as is the thickest that is not thicker.
    @ParameterizedTest
    @CsvSource({
        "1 mm2, 18",
        "1.5 mm2, 16",
        "2.5 mm2, 14",
        "4 mm2, 12",
        "6 mm2, 10",
        "10 mm2, 8",
        "16 mm2, 6",
        "25 mm2, 4",
        "35 mm2, 2",
        "50 mm2, 1",
        "70 mm2, 2/0",
        "95 mm2, 3/0",
        "120 mm2, 4/0",
        "150 mm2, 4/0"
    })
    void ratesAMetricSizeAsTheGaugeBelowIt(String title, String awg) {
        assertThat(MetricSizes.all())
                .filteredOn(size -> size.title().equals(title))
                .singleElement()
                .satisfies(size -> assertThat(size.ratedAs().awg()).isEqualTo(awg));
    }

    @Test
    void neverRatesAMetricSizeAboveItsArea() {
        assertThat(MetricSizes.all()).hasSize(14).allSatisfy(size -> {
            ConductorSize.Metric metric = (ConductorSize.Metric) size;
            assertThat(metric.ratedAs().roundAreaMm2().value())
                    .isLessThanOrEqualTo(metric.areaMm2().value());
        });
    }
}
