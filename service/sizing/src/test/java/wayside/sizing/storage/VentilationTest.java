package wayside.sizing.storage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import wayside.sizing.brief.Chemistry;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Unit;

/** Air for lead-acid, and the current of a short. */
class VentilationTest {
    // Source: EN 50272-3 form as quoted by a maker: 0.05 = 0.00042 m3/Ah of hydrogen, diluted 24 times, five times
    // over.
    @Test
    void theFactorFollowsFromTheHydrogenOfAnAmpereHour() {
        double airflowM3PerHour = opening(Chemistry.FLOODED, 1) / 28;
        double gassingA = 2;
        assertThat(airflowM3PerHour / gassingA).isCloseTo(24 * 0.00042 * 5, within(0.0005));
    }

    // Source: EN 50272-3 form Q = 0.05 n I_gas C / 100 with 2 A per 100 Ah for vented and 1 A for valve-regulated
    // cells, A = 28 Q, as quoted by a maker; the figures are that formula's.
    @Test
    void agreesWithTheTractionForm() {
        assertThat(opening(Chemistry.FLOODED, 6)).isCloseTo(16.8, within(1e-9));
        assertThat(opening(Chemistry.AGM, 6)).isCloseTo(8.4, within(1e-9));
    }

    private static double opening(Chemistry chemistry, int cells) {
        Derived inSeries = Derived.given("cells", cells, Unit.COUNT, "/test");
        Derived capacity = Derived.given("capacity", 100, Unit.AMPERE_HOUR, "/test");
        return Ventilation.openingCm2(ChemistryData.of(chemistry), inSeries, capacity)
                .value();
    }

    // Common practice, no source: a shorted 12 V AGM of 100 Ah gives 2.5 to 4 kA, an LFP pack more than 5 kA.
    @Test
    void aShortGivesThousandsOfAmperes() {
        assertThat(shortCircuit(Chemistry.AGM, 12)).isBetween(2500.0, 4000.0);
        assertThat(shortCircuit(Chemistry.LFP, 12.8)).isGreaterThan(5000);
    }

    private static double shortCircuit(Chemistry chemistry, double voltageV) {
        Derived capacity = Derived.given("capacity", 100, Unit.AMPERE_HOUR, "/test");
        Derived voltage = Derived.given("voltage", voltageV, Unit.VOLT, "/test");
        return ShortCircuit.currentA(ChemistryData.of(chemistry), voltage, capacity)
                .value();
    }
}
