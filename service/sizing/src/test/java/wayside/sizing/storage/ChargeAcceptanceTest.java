package wayside.sizing.storage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import wayside.sizing.brief.Chemistry;

/** Constant charge to the knee, then the taper. */
class ChargeAcceptanceTest {
    private static final double ENERGY_WH = 1200;
    private static final ChemistryData FLOODED = ChemistryData.of(Chemistry.FLOODED);

    /** Hours from one state of charge to another with a charger of a current, for a flooded bank of 100 Ah at 12 V. */
    private static double hours(double from, double to, double currentA) {
        double charging = FLOODED.meanChargeCellVoltageV().value() * 6;
        double knee = FLOODED.chargeKnee().value();
        double maximum = ChargeAcceptance.maximumPowerW(
                ENERGY_WH, FLOODED.maximumChargeRate().typical().value(), charging / 12);
        double eta = FLOODED.chargeEfficiency().value();
        double hours = 0;
        double state = from;
        while (state < to) {
            state = ChargeAcceptance.stateAfter(state, currentA * charging, maximum, knee, eta, ENERGY_WH, 0.01);
            hours += 0.01;
        }
        return hours;
    }

    // Source: charger guidance, hours to nine tenths T90 = 1.2 Ah / I: 100 Ah at 20 A are 6 h. The factor is
    // printed with two digits: 1.15 to 1.25.
    @Test
    void agreesWithTheRuleForNineTenths() {
        assertThat(hours(0, 0.9, 20)).isCloseTo(6, within(0.25));
    }

    // Source: a marine test author's measurement: a flooded bank from 50 to 100 % at 0.15 C took 6.97 h. Where 100 % is
    // was not said: the tail current lies between 1 % and 0.5 % of the capacity.
    @Test
    void agreesWithAMeasuredRecharge() {
        double knee = FLOODED.chargeKnee().value();
        double early = 1 - (1 - knee) * 0.01 / 0.2;
        double late = 1 - (1 - knee) * 0.005 / 0.2;
        assertThat(hours(0.5, early, 15)).isLessThan(6.97);
        assertThat(hours(0.5, late, 15)).isGreaterThan(6.97);
    }

    @Test
    void tapersFromTheKnee() {
        assertThat(ChargeAcceptance.powerW(0.5, 0.95, 1000)).isEqualTo(1000);
        assertThat(ChargeAcceptance.powerW(0.95, 0.95, 1000)).isCloseTo(1000, within(1e-9));
        assertThat(ChargeAcceptance.powerW(0.975, 0.95, 1000)).isCloseTo(500, within(1e-9));
        assertThat(ChargeAcceptance.powerW(1, 0.95, 1000)).isZero();
    }

    @Test
    void takesNothingFromNothing() {
        assertThat(ChargeAcceptance.stateAfter(0.4, 0, 1000, 0.95, 0.97, 2000, 5))
                .isEqualTo(0.4);
        assertThat(ChargeAcceptance.stateAfter(1, 500, 1000, 0.95, 0.97, 2000, 5))
                .isEqualTo(1);
    }

    @Property
    void oneLongStepIsTwoShortOnes(
            @ForAll @DoubleRange(min = 0, max = 0.99) double from,
            @ForAll @DoubleRange(min = 1, max = 3000) double sourceW,
            @ForAll @DoubleRange(min = 0.01, max = 5) double hours) {
        double half = ChargeAcceptance.stateAfter(from, sourceW, 1000, 0.8, 0.9, 2000, hours / 2);
        double twice = ChargeAcceptance.stateAfter(half, sourceW, 1000, 0.8, 0.9, 2000, hours / 2);
        double once = ChargeAcceptance.stateAfter(from, sourceW, 1000, 0.8, 0.9, 2000, hours);
        assertThat(twice).isCloseTo(once, within(1e-9));
    }

    @Property
    void neverStoresMoreThanWasOfferedNorOverfills(
            @ForAll @DoubleRange(min = 0, max = 1) double from,
            @ForAll @DoubleRange(min = 0, max = 3000) double sourceW,
            @ForAll @DoubleRange(min = 0, max = 24) double hours) {
        double after = ChargeAcceptance.stateAfter(from, sourceW, 1000, 0.8, 0.9, 2000, hours);
        assertThat(after).isBetween(from, 1.0);
        assertThat((after - from) * 2000).isLessThanOrEqualTo(sourceW * 0.9 * hours + 1e-9);
    }
}
