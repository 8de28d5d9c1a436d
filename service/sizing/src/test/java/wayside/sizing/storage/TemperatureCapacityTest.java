package wayside.sizing.storage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wayside.sizing.brief.Chemistry;

/** Capacity in the cold. */
class TemperatureCapacityTest {
    // Source: battery worksheet of the trade, attributed there to the IEEE method; multipliers as printed, degrees
    // Celsius being its Fahrenheit steps of 80, 70, 60, 50, 40, 30 and 20.
    @ParameterizedTest
    @CsvSource({"26.7,1.00", "21.2,1.04", "15.6,1.11", "10.0,1.19", "4.4,1.30", "-1.1,1.40", "-6.7,1.59"})
    void agreesWithTheWorksheet(double temperatureC, double multiplier) {
        assertThat(TemperatureCapacity.leadAcidMultiplier(temperatureC)).isCloseTo(multiplier, within(1e-12));
    }

    @Test
    void interpolatesBetweenRowsAndHoldsTheWarmEnd() {
        assertThat(TemperatureCapacity.leadAcidMultiplier(7.2)).isCloseTo(1.245, within(1e-9));
        assertThat(TemperatureCapacity.leadAcidMultiplier(40)).isEqualTo(1.0);
    }

    // Common practice, no source: an LFP bank gives 80 to 90 % at 0 C and about 70 % at -20 C.
    @Test
    void lfpLosesLessInTheCold() {
        assertThat(TemperatureCapacity.capacityShare(Chemistry.LFP, 0)).isBetween(0.8, 0.9);
        assertThat(TemperatureCapacity.capacityShare(Chemistry.LFP, -20)).isCloseTo(0.7, within(1e-9));
        assertThat(TemperatureCapacity.capacityShare(Chemistry.LFP, 0))
                .isGreaterThan(TemperatureCapacity.capacityShare(Chemistry.AGM, 0));
    }

    @Property
    void colderNeverGivesMore(
            @ForAll Chemistry chemistry,
            @ForAll @DoubleRange(min = -40, max = 60) double one,
            @ForAll @DoubleRange(min = -40, max = 60) double other) {
        double cold = Math.min(one, other);
        double warm = Math.max(one, other);
        assertThat(TemperatureCapacity.capacityShare(chemistry, cold))
                .isBetween(0.3, TemperatureCapacity.capacityShare(chemistry, warm));
    }

    // The table's last two rows: 1.40 at -1.1 C, 1.59 at -6.7 C; carried on to -20 C the multiplier is 2.04.
    // Common practice, no source.
    @Test
    void leadAcidGoesOnLosingBelowTheColdestRow() {
        assertThat(TemperatureCapacity.leadAcidMultiplier(-20)).isCloseTo(1.59 + 13.3 * 0.19 / 5.6, within(1e-9));
        assertThat(TemperatureCapacity.capacityShare(Chemistry.LFP, -30))
                .isEqualTo(TemperatureCapacity.capacityShare(Chemistry.LFP, -20));
    }
}
