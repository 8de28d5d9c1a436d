package wayside.sizing.endurance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class ProportionTest {
    // Source: R. G. Newcombe, Two-sided confidence intervals for the single proportion, Statistics in Medicine 17
    // (1998) 857-872, table I, method 3 (Wilson), from memory: 81 of 263 gives 0.2553 to 0.3662; 0 of 20 gives 0 to
    // 0.1611. Four digits printed.
    @Test
    void agreesWithThePublishedIntervals() {
        Proportion many = Proportion.of(81, 263);
        assertThat(many.low()).isCloseTo(0.2553, within(5e-5));
        assertThat(many.high()).isCloseTo(0.3662, within(5e-5));
        Proportion none = Proportion.of(0, 20);
        assertThat(none.low()).isCloseTo(0, within(1e-12));
        assertThat(none.high()).isCloseTo(0.1611, within(5e-5));
    }
}
