package wayside.sizing.ledger;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import wayside.sizing.brief.Chemistry;

/** A heater on a bank in a box, held to the heat balance of one mass: physics textbooks, first-order system. */
class CellWarmthTest {
    private static final int NIGHTS = 10;
    /** 30 kg of 1 kJ/kgK that lag by 8 h lose so much for each degree [W/K]. */
    private static final double LOSS_W_PER_K = 30 / 3.6 / 8;

    private static LedgerHeater heater(double powerW) {
        return new LedgerHeater(powerW, powerW / LOSS_W_PER_K, 2, 5, 8);
    }

    private static CellWarmth warmth(double powerW, double airC) {
        RunWeather air = Trips.dark(NIGHTS, airC);
        CellWarmth cells = new CellWarmth(air.boxC.length, heater(powerW));
        cells.begin(air, 0);
        for (int day = 0; day < NIGHTS; day++) {
            cells.fillDay(air, 24 * day, 0);
        }
        return cells;
    }

    private static double meanW(CellWarmth cells) {
        double sum = 0;
        for (int hour = 48; hour < cells.heaterW.length; hour++) {
            sum += cells.heaterW[hour];
        }
        return sum / (cells.heaterW.length - 48);
    }

    // 10 W into 1.04 W/K: 9.6 K above the air, whatever it would like.
    @Test
    void aHeaterTooWeakWarmsByItsPowerOverTheLoss() {
        CellWarmth cells = warmth(10, -20);
        assertThat(cells.cellC[239]).isCloseTo((float) (-20 + 10 / LOSS_W_PER_K), within(0.01f));
        assertThat(meanW(cells)).isCloseTo(10, within(1e-6));
    }

    // Held between 2 and 5 C in -10 C, 13.5 K above the air: 13.5 times 1.04 W.
    @Test
    void aStrongHeaterHoldsTheBankAndTakesWhatLeaks() {
        CellWarmth cells = warmth(60, -10);
        for (int hour = 0; hour < cells.cellC.length; hour++) {
            assertThat(cells.cellC[hour]).isBetween(0.3f, 5.01f);
        }
        assertThat(meanW(cells)).isCloseTo(13.5 * LOSS_W_PER_K, within(0.1 * 13.5 * LOSS_W_PER_K));
    }

    @Test
    void nothingIsHeatedAboveFrost() {
        assertThat(meanW(warmth(60, 6))).isZero();
    }

    // The bank pays for it: a day's heat is missing at the end of the day, through the discharge's efficiency of 0.98.
    @Test
    void theBankGivesTheHeat() {
        RunWeather air = Trips.dark(1, -10);
        Ledger ledger = new Ledger(List.of(Trips.day(1, 0, 0, 0)), Trips.bank(Chemistry.LFP, 2000), heater(60), 0, 1);
        Tally tally = Trips.run(ledger, air);
        assertThat(tally.wantedHeaterWh).isPositive();
        assertThat(tally.withdrawnWh).isCloseTo(tally.wantedHeaterWh / 0.98, within(1e-9));
        assertThat(tally.imbalanceWh()).isCloseTo(0, within(1e-9));
    }

    @Test
    void aHeatedBankIsChargedInFrost() {
        RunWeather air = Trips.dark(NIGHTS, -10);
        Arrays.fill(air.yieldWhPerW, 0.1);
        Ledger cold = new Ledger(List.of(Trips.day(NIGHTS, 5, 0, 0)), Trips.bank(Chemistry.LFP, 2000), 500, 0.5);
        Ledger warm =
                new Ledger(List.of(Trips.day(NIGHTS, 5, 0, 0)), Trips.bank(Chemistry.LFP, 2000), heater(60), 500, 0.5);
        assertThat(Trips.run(cold, air).coldHours).isEqualTo(240);
        assertThat(Trips.run(warm, air).coldHours).isZero();
    }

    // An empty bank can't heat: what the heater does not get is essential energy short.
    @Test
    void aHeaterThatTheBankCannotFeedGoesShort() {
        RunWeather air = Trips.dark(NIGHTS, -15);
        Ledger ledger =
                new Ledger(List.of(Trips.day(NIGHTS, 0, 0, 0)), Trips.bank(Chemistry.LFP, 300), heater(60), 0, 1);
        Tally tally = Trips.run(ledger, air);
        assertThat(tally.isFlat()).isTrue();
        assertThat(tally.unmetEssentialWh).isCloseTo(tally.unmetHeaterWh, within(1e-6));
        assertThat(tally.imbalanceWh()).isCloseTo(0, within(1e-9));
    }
}
