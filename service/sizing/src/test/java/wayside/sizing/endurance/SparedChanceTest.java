package wayside.sizing.endurance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Unit;

class SparedChanceTest {
    /** Its z is 1.959964, ours the printed 1.96. */
    private static final double DIGITS = 1e-5;

    private static SparedChance of(int better, int worse, int runs) {
        boolean[] without = new boolean[runs];
        boolean[] with = new boolean[runs];
        Arrays.fill(without, 0, better, true);
        Arrays.fill(with, better, better + worse, true);
        return SparedChance.of("a-change", without, with, runs(runs));
    }

    private static Derived runs(int runs) {
        return Derived.given("runs", runs, Unit.COUNT, "/runs");
    }

    // Source: example of diffpropci.Wald.mp in the manual of the R package PropCIs 0.3-0, b = 3, c = 9, n = 32.
    @Test
    void isTheIntervalOfAReferenceLibrary() {
        SparedChance spared = of(9, 3, 32);
        assertThat(spared.value().value()).isEqualTo(0.1875);
        assertThat(spared.low().value()).isCloseTo(-0.01448204, within(DIGITS));
        assertThat(spared.high().value()).isCloseTo(0.38948204, within(DIGITS));
    }

    @Test
    void runsThatGoFlatEitherWayDoNotCount() {
        boolean[] all = new boolean[400];
        Arrays.fill(all, true);
        SparedChance spared = SparedChance.of("a-change", all, all, runs(400));
        assertThat(spared.value().value()).isZero();
        assertThat(spared.low().value()).isZero();
        assertThat(spared.high().value()).isZero();
    }

    @Test
    void threeRunsOfTwoThousandMayBeLuckAndFiveAreNot() {
        assertThat(of(3, 0, 2000).low().value()).isNegative();
        assertThat(of(5, 0, 2000).low().value()).isPositive();
    }
}
