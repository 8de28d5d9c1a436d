package wayside.sizing.ledger;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import wayside.sizing.brief.Chemistry;
import wayside.sizing.trace.Unit;

/** Which loads go short: against sums by hand, and against the ledger's own sums, which are kept another way. */
class ShortageTest {
    private static final int NIGHTS = 3;
    private static final double ESSENTIAL_W = 20;
    private static final double COMFORT_W = 60;

    /** From 18 to 22 o'clock. */
    private static double[] evening() {
        double[] watts = new double[Unit.HOURS_PER_DAY];
        Arrays.fill(watts, 18, 22, COMFORT_W);
        return watts;
    }

    private static Outcome outcome(double nominalWh, double sunWhPerW) {
        HourlyUses essential = HourlyUses.steady(ESSENTIAL_W);
        HourlyUses comfort = new HourlyUses(evening(), new double[24], new double[24]);
        LedgerDay day = new LedgerDay(NIGHTS, essential, comfort, Trips.always(0), Trips.always(0));
        Ledger ledger = new Ledger(List.of(day), Trips.bank(Chemistry.LFP, nominalWh), 100, 1);
        List<LoadHours> loads =
                List.of(new LoadHours(true, Trips.always(ESSENTIAL_W)), new LoadHours(false, evening()));
        RunWeather dark = Trips.dark(NIGHTS, 20);
        Arrays.fill(dark.yieldWhPerW, 8, 17, sunWhPerW);
        return Simulation.untracked(ledger, new Same(dark), 1, List.of(loads));
    }

    /** A weather of one run. */
    private record Same(RunWeather weather) implements Weather {
        @Override
        public int hours() {
            return weather.yieldWhPerW.length;
        }

        @Override
        public void fill(int run, RunWeather into) {
            into.set(weather);
        }
    }

    // By hand: 1,000 Wh of LFP give 900, 675 above the reserve; divided by the discharge efficiency that is less than
    // the
    // first evening's 600 Wh and the 600 Wh of the others to midnight. So comfort runs on the first evening until the
    // reserve
    // is reached, and never after it; the essential 480 Wh a day go on into the second day.
    @Test
    void comfortWaitsFromTheReserveOnAndTheOthersGoOn() {
        Outcome outcome = outcome(1000, 0);
        assertThat(outcome.fullNights(1)).isZero();
        assertThat(outcome.servedShare(1)).isBetween(0.2, 1.0 / 3);
        assertThat(outcome.fullNights(0)).isEqualTo(1);
        assertThat(outcome.servedShare(0)).isBetween(0.4, 0.6);
    }

    @Test
    void whatIsEnoughForAllServesAll() {
        Outcome outcome = outcome(4000, 0);
        assertThat(outcome.servedShare(0)).isEqualTo(1);
        assertThat(outcome.servedShare(1)).isEqualTo(1);
        assertThat(outcome.fullNights(1)).isEqualTo(NIGHTS);
    }

    // The same energy by two accounts: by load and hour here, as one sum in the ledger.
    @Test
    void whatTheLoadsMissIsWhatTheLedgerMisses() {
        for (double nominalWh = 300; nominalWh < 3000; nominalWh += 171) {
            Outcome outcome = outcome(nominalWh, 0.3);
            double essentialWh = NIGHTS * 24 * ESSENTIAL_W * (1 - outcome.servedShare(0));
            double comfortWh = NIGHTS * 4 * COMFORT_W * (1 - outcome.servedShare(1));
            assertThat(essentialWh).as("essential beside %s Wh", nominalWh).isCloseTo(outcome.unmetWh(), within(1e-6));
            assertThat(comfortWh).as("comfort beside %s Wh", nominalWh).isCloseTo(outcome.shedWh(), within(1e-6));
        }
    }

    // By hand: 100 W of array bring 0.3 Wh a watt in nine hours of the first day, 270 Wh; loads want 720 a day.
    @Test
    void theBalanceIsWhatComesInLessWhatIsWantedAndLost() {
        Outcome outcome = outcome(4000, 0.3);
        double wantedWh = NIGHTS * (24 * ESSENTIAL_W + 4 * COMFORT_W);
        assertThat(outcome.balanceWh() + outcome.storageLossWh()).isCloseTo(270 - wantedWh, within(1e-6));
    }
}
