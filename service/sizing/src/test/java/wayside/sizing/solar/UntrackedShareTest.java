package wayside.sizing.solar;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wayside.sizing.solar.array.ModuleFigures;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Unit;

/** What a panel gives without a tracker, recomputed. */
class UntrackedShareTest {
    // Source: recomputed from the formula in its Javadoc for an 18 V panel at -0.42 %/K (assumed) on a battery at 13.6
    // V.
    @ParameterizedTest
    @CsvSource({"-10, 0.69", "25, 0.79", "45, 0.87", "60, 0.93"})
    void shareWithoutATrackerAgrees(double cellC, double share) {
        assertThat(untracked(cellC)).isCloseTo(share, within(0.005));
    }

    @Test
    void aMeltingPanelGivesNothingRatherThanLessThanNothing() {
        assertThat(untracked(400)).isZero();
    }

    private static double untracked(double cellC) {
        ModuleFigures module = new ModuleFigures(
                value(22, Unit.VOLT),
                value(18, Unit.VOLT),
                value(6, Unit.AMPERE),
                Optional.empty(),
                Optional.of(value(-0.0042, Unit.PER_KELVIN)));
        return UntrackedShare.at(value(cellC, Unit.CELSIUS), value(1, Unit.COUNT), module, value(12, Unit.VOLT))
                .value();
    }

    private static Derived value(double value, Unit unit) {
        return Derived.given("test", value, unit, "/test");
    }
}
