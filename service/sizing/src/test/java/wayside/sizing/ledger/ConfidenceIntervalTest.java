package wayside.sizing.ledger;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Unit;

class ConfidenceIntervalTest {
    private static ConfidenceInterval of(double hits, double runs) {
        return ConfidenceInterval.of(
                Derived.given("share", hits / runs, Unit.SHARE, "share"),
                Derived.given("runs", runs, Unit.COUNT, "runs"));
    }

    // Source: R. G. Newcombe, Two-sided confidence intervals for the single proportion, Statistics in Medicine 17
    // (1998) 857-872, table I, method 3 (Wilson), from memory: 81 of 263 gives 0.2553 to 0.3662; 0 of 20 gives 0 to
    // 0.1611. Four digits printed.
    @Test
    void agreesWithThePublishedIntervals() {
        ConfidenceInterval many = of(81, 263);
        assertThat(many.low().value()).isCloseTo(0.2553, within(5e-5));
        assertThat(many.high().value()).isCloseTo(0.3662, within(5e-5));
        ConfidenceInterval none = of(0, 20);
        assertThat(none.low().value()).isCloseTo(0, within(1e-12));
        assertThat(none.high().value()).isCloseTo(0.1611, within(5e-5));
    }
}
