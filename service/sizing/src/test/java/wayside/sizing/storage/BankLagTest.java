package wayside.sizing.storage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import wayside.sizing.brief.At;
import wayside.sizing.brief.BankBox;
import wayside.sizing.brief.BankPlacement;

class BankLagTest {
    private static double hours(double massKg, double areaM2, double plywoodM, double foamM) {
        BankBox box = new BankBox(At.ROOT, massKg, areaM2, OptionalDouble.of(plywoodM), OptionalDouble.of(foamM));
        return BankLag.hours(BankPlacement.OPEN.boxed(box)).value();
    }

    // Worked by hand: 30 kg at 1.0 kJ/kgK are 8.3 Wh/K; 12 mm of plywood let 1.9 W/m2K through, 1.5 W/K on 0.8 m2: 5.5
    // h.
    // 20 mm of foam instead let 1.0 through: 10 h. Materials: common practice, no source.
    @Test
    void isMassByLeakage() {
        assertThat(hours(30, 0.8, 0.012, 0)).isCloseTo(5.5, within(0.1));
        assertThat(hours(30, 0.8, 0, 0.02)).isCloseTo(10.4, within(0.1));
    }

    @Test
    void growsWithMassAndFoamAndFallsWithArea() {
        double plain = hours(30, 0.8, 0.012, 0);
        assertThat(hours(60, 0.8, 0.012, 0)).isCloseTo(2 * plain, within(1e-9));
        assertThat(hours(30, 1.6, 0.012, 0)).isCloseTo(plain / 2, within(1e-9));
        assertThat(hours(30, 0.8, 0.012, 0.03)).isGreaterThan(plain);
    }

    @Test
    void isEightHoursUnlessSaid() {
        assertThat(BankLag.hours(BankPlacement.OPEN).value()).isEqualTo(8);
        assertThat(BankLag.hours(BankPlacement.OPEN.lagging(0)).value()).isZero();
    }
}
