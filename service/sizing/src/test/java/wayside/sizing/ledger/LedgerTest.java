package wayside.sizing.ledger;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wayside.sizing.brief.Chemistry;
import wayside.sizing.storage.ChargeAcceptance;
import wayside.sizing.storage.TemperatureCapacity;

class LedgerTest {
    private static final int NIGHTS = 10;

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
        Ledger ledger = new Ledger(List.of(Trips.day(NIGHTS, 10, 0, 200)), Trips.bank(Chemistry.LFP, 1000), 0, 0.5);
        Tally tally = Trips.run(ledger, Trips.dark(NIGHTS, -1));
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
        Ledger ledger = new Ledger(List.of(Trips.day(NIGHTS, 5, 20, 0)), Trips.bank(Chemistry.LFP, 1000), 0, 1);
        Tally tally = Trips.run(ledger, Trips.dark(NIGHTS, 20));
        assertThat(tally.unmetOtherWh).isPositive();
        // The reserve, a quarter of the usable energy, carries the 5 W of the essential load for 44 hours after the
        // shedding.
        assertThat(tally.firstFlatHour).isBetween(25 + 40, 35 + 45);
    }

    // Physics of one time constant: after tau hours a step of the air is followed by 1 - 1/e of it.
    @Test
    void aHeavyBankFollowsTheAirWithItsLag() {
        RunWeather step = new RunWeather(48);
        Arrays.fill(step.boxC, 24, 48, 10);
        step.follow(8);
        assertThat(step.boxC[23]).isCloseTo(0, within(1e-5f));
        assertThat(step.boxC[31]).isCloseTo((float) (10 * (1 - Math.exp(-1))), within(1e-5f));
        assertThat(step.dayC).containsExactly(0, 10);
    }

    // Source: physics of one time constant in a wave of 24 h: damped to 1 / sqrt(1 + (2 pi tau / 24)^2), 0.43 at 8 h.
    @Test
    void aDaysWaveIsDampedInAHeavyBank() {
        int days = 12;
        RunWeather wave = new RunWeather(24 * days);
        for (int hour = 0; hour < wave.boxC.length; hour++) {
            wave.boxC[hour] = (float) Math.cos(2 * Math.PI * (hour - 15) / 24.0);
        }
        wave.follow(8);
        double most = 0;
        for (int hour = 24 * (days - 1); hour < 24 * days; hour++) {
            most = Math.max(most, wave.boxC[hour]);
        }
        assertThat(most).isCloseTo(0.43, within(0.01));
    }

    // Lead-acid rows stand at whole degrees of Fahrenheit, those of the quick table at whole degrees of Celsius.
    @Test
    void theQuickTableOfCapacityIsTheCapacity() {
        for (Chemistry chemistry : Chemistry.values()) {
            for (double c = -45; c < 40; c += 0.37) {
                assertThat(CapacityTable.of(chemistry).at(c))
                        .isCloseTo(TemperatureCapacity.capacityShare(chemistry, c), within(2e-3));
            }
        }
    }

    // Days of two temperatures: each takes what the loads take at its own mean.
    @Test
    void aDayTakesWhatItsOwnAirAsksFor() {
        DayUses cool = new DayUses(HourlyUses.steady(5), HourlyUses.steady(0));
        DayUses hot = new DayUses(HourlyUses.steady(15), HourlyUses.steady(0));
        LedgerDay day = new LedgerDay(2, new UsesByAir(List.of(cool, hot), 10, 20), Trips.always(0), Trips.always(0));
        Ledger ledger = new Ledger(List.of(day), Trips.bank(Chemistry.LFP, 5000), 0, 1);
        RunWeather run = Trips.dark(2, 12);
        Arrays.fill(run.boxC, 24, 48, 40);
        run.follow(8);
        assertThat(Trips.run(ledger, run).servedWh).isCloseTo(24 * (5 + 15), within(1e-9));
    }

    @Test
    void nightGivesNothing() {
        ModelWeather weather = Trips.weather(50, 12, 3, 0.4, 0.12);
        double[] yield = Trips.first(weather, 0).yieldWhPerW;
        for (int hour = 0; hour < yield.length; hour++) {
            // Source: almanac, from memory: at 50 degrees north the December sun is up from about 8 to 16 h.
            int local = hour % 24;
            if (local < 7 || local > 16) {
                assertThat(yield[hour]).isZero();
            }
        }
    }

    private static double firstFlatHour(Chemistry chemistry, double nominalWh, double loadW, double bankC) {
        Ledger ledger = new Ledger(List.of(Trips.day(NIGHTS, loadW, 0, 0)), Trips.bank(chemistry, nominalWh), 0, 1);
        return Trips.run(ledger, Trips.dark(NIGHTS, bankC)).firstFlatHour;
    }
}
