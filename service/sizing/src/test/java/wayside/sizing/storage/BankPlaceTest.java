package wayside.sizing.storage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wayside.sizing.brief.At;
import wayside.sizing.brief.BankBox;
import wayside.sizing.brief.BankHeater;
import wayside.sizing.brief.BankPlacement;
import wayside.sizing.brief.Compartment;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Source;
import wayside.sizing.trace.Unit;

class BankPlaceTest {
    private static Derived air(double celsius) {
        return Derived.convention("air", celsius, Unit.CELSIUS, "", Source.definition());
    }

    private static double warmerK(BankPlacement placement, double airC) {
        return BankPlace.of(placement).warmerK("", air(airC)).value();
    }

    // Common practice, no source: a living space is 15 K warmer than the frost outside, and nobody heats it beyond 20
    // C.
    @ParameterizedTest
    @CsvSource({
        "CABIN, -10, 15",
        "CABIN, 5, 15",
        "CABIN, 12, 8",
        "CABIN, 28, 0",
        "UNDERFLOOR, -10, 5",
        "UNDERFLOOR, 18, 2",
        "OUTSIDE, -10, 0",
        "OUTSIDE, 28, 0"
    })
    void aPlaceIsWarmInTheColdOnly(Compartment where, double airC, double warmerK) {
        assertThat(warmerK(BankPlacement.OPEN.in(where), airC)).isEqualTo(warmerK);
    }

    @Test
    void whatIsGivenIsTaken() {
        assertThat(warmerK(BankPlacement.warmerBy(25), 10)).isEqualTo(25);
        assertThat(BankPlace.of(BankPlacement.OPEN).choices()).hasSize(1);
        assertThat(BankPlace.of(BankPlacement.OPEN.in(Compartment.CABIN)).choices())
                .isEmpty();
    }

    // Worked by hand: 1 / (0.25 + 0.18 + 0.012 / 0.13) = 1.915 W/m2K through 0.8 m2.
    @Test
    void aBoxLosesWhatItsWallsLetThrough() {
        BankBox box = new BankBox(At.ROOT, 30, 0.8, OptionalDouble.empty(), OptionalDouble.empty());
        BankHeating heating =
                BankPlace.of(BankPlacement.OPEN.boxed(box).heated(30)).heating().orElseThrow();
        assertThat(heating.lossWPerK().value()).isCloseTo(1.532, within(1e-3));
        assertThat(heating.riseK().value()).isCloseTo(30 / 1.532, within(0.02));
        // 10 K below what the heater holds, 3.5 C: 15.3 W all day.
        assertThat(heating.dayWh("", air(-6.5)).value()).isCloseTo(24 * 15.32, within(0.1));
        assertThat(heating.dayWh("", air(20)).value()).isZero();
        assertThat(heating.dayWh("", air(-60)).value()).isEqualTo(24 * 30);
    }

    // 30 kg of 1 kJ/kgK that lag by 8 h.
    @Test
    void withoutABoxTheLagSaysWhatIsLost() {
        BankHeating heating =
                BankPlace.of(BankPlacement.OPEN.heated(30)).heating().orElseThrow();
        assertThat(heating.lossWPerK().value()).isCloseTo(30 / 3.6 / 8, within(1e-9));
    }

    @Test
    void oneTemperatureOfAHeaterMakesTheOther() {
        assertThat(temperatures(OptionalDouble.empty(), OptionalDouble.empty())).containsExactly(2, 5);
        assertThat(temperatures(OptionalDouble.of(10), OptionalDouble.empty())).containsExactly(10, 13);
        assertThat(temperatures(OptionalDouble.empty(), OptionalDouble.of(1))).containsExactly(-2, 1);
    }

    private static double[] temperatures(OptionalDouble on, OptionalDouble off) {
        BankHeating heating = BankPlace.of(BankPlacement.OPEN.heated(new BankHeater(At.ROOT, 30, on, off)))
                .heating()
                .orElseThrow();
        return new double[] {heating.onBelowC().value(), heating.offAboveC().value()};
    }

    @Test
    void theHeaterThatWouldDoKeepsOutTheFrost() {
        MissingHeater missing =
                MissingHeater.of(BankPlace.of(BankPlacement.OPEN), air(-12)).orElseThrow();
        // 17 K at 1.04 W/K: 17.7 W, in steps of ten.
        assertThat(missing.powerW().value()).isEqualTo(20);
        assertThat(BankPlace.of(missing.placement()).heating().orElseThrow().warmedC(-12))
                .isEqualTo(2);
        assertThat(MissingHeater.of(BankPlace.of(missing.placement()), air(-12)))
                .isEmpty();
        assertThat(MissingHeater.of(BankPlace.of(BankPlacement.OPEN.lagging(0)), air(-12)))
                .isEmpty();
    }
}
