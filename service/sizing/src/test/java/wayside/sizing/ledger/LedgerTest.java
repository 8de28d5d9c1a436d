package wayside.sizing.ledger;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wayside.sizing.brief.Chemistry;
import wayside.sizing.storage.ChargeAcceptance;
import wayside.sizing.trace.Unit;

class LedgerTest {
    private static final double[] DARK = new double[10 * Unit.HOURS_PER_DAY];
    private static final double[] STORE_WH = new double[DARK.length];

    // Common practice, no source: an LFP pack of 1,000 Wh offers nine tenths; 0.98 of what leaves the cells reaches the
    // terminals.
    @Test
    void aLithiumPackCarriesNineTenthsOfItsRating() {
        double hours = firstFlatHour(Chemistry.LFP, 1000, 20, 25);
        assertThat(hours).isEqualTo(Math.floor(0.9 * 0.98 * 1000 / 20));
    }

    // Common practice, no source: an AGM bank gives half its rated energy; at its 20 h rate Peukert takes nothing from
    // it.
    @Test
    void anAgmBankCarriesHalfOfItsRating() {
        double hours = firstFlatHour(Chemistry.AGM, 1000, 20, 27);
        assertThat(hours).isEqualTo(Math.floor(0.5 * 0.97 * 1000 / 20));
    }

    @Test
    void aLeadAcidBankLastsShorterInTheCold() {
        assertThat(firstFlatHour(Chemistry.AGM, 1000, 20, -5)).isLessThan(firstFlatHour(Chemistry.AGM, 1000, 20, 25));
    }

    // Common practice, no source: LFP isn't charged below 0 C but may be discharged there.
    @Test
    void noChargeEntersAFrozenLithiumPack() {
        Ledger ledger = new Ledger(List.of(Trips.day(10, 10, 0, 200, -1)), Trips.bank(Chemistry.LFP, 1000), 0, 0.5);
        Tally tally = new Tally(ledger.bank);
        ledger.run(DARK, new int[10], false, tally, STORE_WH);
        assertThat(tally.endWh).isLessThanOrEqualTo(500);
        assertThat(tally.coldHours).isEqualTo(240);
        assertThat(tally.coldRefusedWh).isPositive();
        assertThat(tally.shoreWh).isCloseTo(10 * 240, within(1e-9));
    }

    @ParameterizedTest
    @CsvSource({"0.2, 90", "0.94, 400", "0.96, 400", "0.5, 5000", "0.99, 30", "0.9, 120"})
    void chargesAsTheAcceptanceSays(double start, double offeredW) {
        LedgerBank bank = Trips.bank(Chemistry.LFP, 1000);
        double expected = ChargeAcceptance.stateAfter(
                start, offeredW, bank.chargeW, bank.knee, bank.chargeEfficiency, bank.energyWh, 1);
        double stored = bank.hourOfCharge.storedWh(offeredW, (1 - start) * bank.energyWh);
        assertThat(start + stored / bank.energyWh).isCloseTo(expected, within(1e-12));
        assertThat(bank.hourOfCharge.takesAll(offeredW, (1 - start) * bank.energyWh))
                .isEqualTo(Math.abs(stored - offeredW * bank.chargeEfficiency) < 1e-9);
    }

    @Test
    void shedsOtherLoadsBeforeAnEssentialOneGoesShort() {
        Ledger ledger = new Ledger(List.of(Trips.day(10, 5, 20, 0, 20)), Trips.bank(Chemistry.LFP, 1000), 0, 1);
        Tally tally = new Tally(ledger.bank);
        ledger.run(DARK, new int[10], false, tally, STORE_WH);
        assertThat(tally.unmetOtherWh).isPositive();
        // The reserve, a quarter of the usable energy, carries the 5 W of the essential load for 44 hours after the
        // shedding.
        assertThat(tally.firstFlatHour).isBetween(25 + 40, 35 + 45);
    }

    @Test
    void nightGivesNothing() {
        ModelWeather weather = Trips.weather(50, 12, 3, 0.4, 0.12);
        double[] yield = new double[weather.hours()];
        weather.fill(0, yield);
        for (int hour = 0; hour < yield.length; hour++) {
            // Source: almanac, from memory: at 50 degrees north the December sun is up from about 8 to 16 h.
            int local = hour % 24;
            if (local < 7 || local > 16) {
                assertThat(yield[hour]).isZero();
            }
        }
    }

    private static double firstFlatHour(Chemistry chemistry, double nominalWh, double loadW, double bankC) {
        Ledger ledger = new Ledger(List.of(Trips.day(10, loadW, 0, 0, bankC)), Trips.bank(chemistry, nominalWh), 0, 1);
        Tally tally = new Tally(ledger.bank);
        ledger.run(DARK, new int[10], false, tally, STORE_WH);
        return tally.firstFlatHour;
    }
}
