package wayside.sizing.sizes;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Percentage.withPercentage;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import wayside.sizing.brief.BatterySize;
import wayside.sizing.brief.Box;
import wayside.sizing.brief.Chemistry;
import wayside.sizing.brief.ModuleSize;
import wayside.sizing.brief.PartSize;
import wayside.sizing.brief.SizesThatExist;

/** The tables are from memory; what can be held against something outside is. */
class SizeTablesTest {
    private static final SizesThatExist USUAL = SizeTables.usual();

    private static double litres(Box box) {
        return box.lengthMm() * box.widthMm() * box.heightMm() / 1e6;
    }

    private static Stream<PartSize> everySize() {
        return Stream.of(
                        USUAL.batteries(),
                        USUAL.modules(),
                        USUAL.controllers(),
                        USUAL.alternatorChargers(),
                        USUAL.shoreChargers(),
                        USUAL.inverters(),
                        USUAL.converters(),
                        USUAL.units())
                .flatMap(List::stream);
    }

    @Test
    void everySizeHasAMassAndAnOuterSize() {
        assertThat(everySize()).hasSizeGreaterThan(120).allSatisfy(size -> {
            assertThat(size.massKg()).isPositive();
            assertThat(litres(size.box())).isPositive();
            // From cork to lead: nothing that is sold is lighter or heavier for its size.
            assertThat(size.massKg() / litres(size.box())).isBetween(0.2, 3.0);
        });
    }

    // Source: Wikipedia, Comparison of commercial battery types: lead-acid 30 to 40 Wh/kg. An owner's page: LFP of 100
    // to 120
    // Ah weighs 10 to 14 kg, so 91 to 154 Wh/kg. Flooded batteries rated over 20 h reach 46 Wh/kg (common practice, no
    // source).
    @Test
    void batteriesWeighWhatIsPublished() {
        for (BatterySize battery : USUAL.batteries()) {
            double whPerKg = battery.energyWh() / battery.massKg();
            switch (battery.chemistry()) {
                case LFP -> assertThat(whPerKg).as(battery.origin().row()).isBetween(91.0, 154.0);
                case AGM, GEL -> assertThat(whPerKg).as(battery.origin().row()).isBetween(30.0, 41.0);
                case FLOODED -> assertThat(whPerKg).as(battery.origin().row()).isBetween(30.0, 46.0);
                case NMC -> assertThat(whPerKg).as(battery.origin().row()).isBetween(130.0, 200.0);
            }
        }
    }

    // Common practice, no source: a case with its handles holds less than its cells would.
    @Test
    void lithiumTakesLessRoomThanLeadAcid() {
        for (BatterySize battery : USUAL.batteries()) {
            double whPerL = battery.energyWh() / litres(battery.box());
            if (battery.chemistry().isLeadAcid()) {
                assertThat(whPerL).as(battery.origin().row()).isBetween(60.0, 110.0);
            } else {
                assertThat(whPerL).as(battery.origin().row()).isBetween(110.0, 350.0);
            }
        }
    }

    @Test
    void everyLadderOfBatteriesRises() {
        Map<String, BatterySize> last = new HashMap<>();
        for (BatterySize battery : USUAL.batteries()) {
            BatterySize before = last.put(battery.chemistry() + " " + battery.voltageV(), battery);
            if (before != null) {
                assertThat(battery.capacityAh()).isGreaterThan(before.capacityAh());
                assertThat(battery.massKg()).isGreaterThan(before.massKg());
            }
        }
        assertThat(last).hasSize(9);
        assertThat(USUAL.batteries()).extracting(BatterySize::chemistry).contains(Chemistry.values());
    }

    // Fact of definition: the rated power is the product of volts and amperes at the best point; open and short circuit
    // lie
    // above it, the fill factor of silicon at 0.70 to 0.83. Sources of the label's ladder: none; of the power of a
    // square
    // metre: silicon of 16 to 23 % at 1000 W/m2.
    @Test
    void modulesAreOfSilicon() {
        List<Double> powers = new ArrayList<>();
        for (ModuleSize module : USUAL.modules()) {
            powers.add(module.powerW());
            String row = module.origin().row();
            assertThat(module.workingV() * module.workingA()).as(row).isCloseTo(module.powerW(), withPercentage(1));
            assertThat(module.powerW() / (module.openCircuitV() * module.shortCircuitA()))
                    .as(row)
                    .isBetween(0.70, 0.83);
            double areaM2 = module.box().lengthMm() * module.box().widthMm() / 1e6;
            assertThat(module.powerW() / areaM2).as(row).isBetween(160.0, 230.0);
            // NEC 690.9 with 690.8: a fuse in series is at least 1.56 times the short-circuit current.
            assertThat(module.largestSeriesFuseA()).as(row).isGreaterThan(1.25 * 1.25 * module.shortCircuitA());
        }
        assertThat(powers).isSorted().first().isEqualTo(100.0);
        assertThat(powers).last().isEqualTo(450.0);
    }

    @Test
    void theOtherLaddersRise() {
        assertThat(USUAL.inverters().stream().map(i -> i.continuousW()).toList())
                .isSorted();
        assertThat(USUAL.inverters()).allSatisfy(i -> assertThat(i.surgeW()).isGreaterThanOrEqualTo(i.continuousW()));
        assertThat(USUAL.units().stream().map(u -> u.energyWh()).toList()).isSorted();
        assertThat(USUAL.units().stream().map(u -> u.inverterW()).toList()).isSorted();
        assertThat(USUAL.units().stream().map(u -> u.solarW()).toList()).isSorted();
        for (double bus : new double[] {12, 24, 48}) {
            assertThat(USUAL.shoreChargers().stream()
                            .filter(s -> s.outputV() == bus)
                            .map(s -> s.currentA())
                            .toList())
                    .isSorted()
                    .hasSizeGreaterThan(5);
            assertThat(USUAL.alternatorChargers().stream()
                            .filter(s -> s.outputV() == bus && s.inputV() == 12)
                            .map(s -> s.currentA())
                            .toList())
                    .isSorted()
                    .hasSizeGreaterThan(4);
        }
    }
}
