package wayside.sizing.ledger;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.concurrent.ForkJoinPool;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import wayside.sizing.brief.Chemistry;
import wayside.sizing.trace.Unit;

class LedgerLawsTest {
    private static final int NIGHTS = 6;

    @Property(tries = 100)
    void energyIsConservedAtEveryStep(
            @ForAll Chemistry chemistry,
            @ForAll @DoubleRange(min = 200, max = 5000) double nominalWh,
            @ForAll @DoubleRange(min = 0, max = 1000) double solarW,
            @ForAll @DoubleRange(min = 0, max = 120) double loadW,
            @ForAll @DoubleRange(min = 0, max = 120) double otherW,
            @ForAll @DoubleRange(min = -25, max = 55) double bankC,
            @ForAll @DoubleRange(min = 0, max = 1) double start) {
        LedgerDay day = Trips.day(NIGHTS, loadW, otherW, 5, bankC);
        LedgerBank bank = Trips.bank(chemistry, nominalWh);
        LedgerStay stay = new LedgerStay(day, day.bankC[0], bank, solarW);
        double[] sun = sun(0.5);
        double[] store = new double[sun.length];
        Tally tally = new Tally(bank);
        tally.begin(start * bank.energyWh);
        for (int hour = 0; hour < sun.length; hour++) {
            int local = hour % Unit.HOURS_PER_DAY;
            tally.simulate(stay, local, local + 1, hour - local, sun, store);
            tally.accrue(day, 1.0 / Unit.HOURS_PER_DAY);
            double throughput = tally.servedWh + tally.withdrawnWh + tally.solarWh + tally.shoreWh + 1;
            assertThat(tally.imbalanceWh()).isCloseTo(0, within(1e-9 * throughput));
            assertThat(store[hour] / bank.energyWh).isBetween(-1e-12, 1 + 1e-12);
            assertThat(tally.surplusWh).isGreaterThanOrEqualTo(-1e-9);
        }
    }

    @Property(tries = 300)
    void aLargerArrayOrBankNeverRaisesTheChance(
            @ForAll Chemistry chemistry,
            @ForAll @DoubleRange(min = 200, max = 2000) double nominalWh,
            @ForAll @DoubleRange(min = 20, max = 300) double solarW,
            @ForAll @DoubleRange(min = 1, max = 2) double factor,
            @ForAll @DoubleRange(min = 5, max = 40) double loadW,
            @ForAll @DoubleRange(min = 0, max = 40) double otherW,
            @ForAll @DoubleRange(min = 0, max = 60) double engineW,
            @ForAll @DoubleRange(min = -12, max = 30) double bankC,
            @ForAll @DoubleRange(min = 0, max = 20) double swingK) {
        LedgerDay day = changingDay(loadW, otherW, engineW, bankC, swingK);
        int plain = flat(day, chemistry, nominalWh, solarW);
        assertThat(flat(day, chemistry, nominalWh * factor, solarW)).isLessThanOrEqualTo(plain);
        assertThat(flat(day, chemistry, nominalWh, solarW * factor)).isLessThanOrEqualTo(plain);
    }

    /** Warm by day and cold by night; a drive at ten, what may stop in the evening. */
    private static LedgerDay changingDay(double loadW, double otherW, double engineW, double meanC, double swingK) {
        double[] engine = Trips.always(0);
        engine[10] = engineW;
        double[] bankC = Trips.always(meanC);
        double[] other = Trips.always(0);
        for (int hour = 0; hour < bankC.length; hour++) {
            bankC[hour] += swingK / 2 * Math.cos((hour - 15) * Math.PI / 12);
            other[hour] = hour >= 18 ? otherW : 0;
        }
        return new LedgerDay(
                NIGHTS,
                HourlyUses.steady(loadW),
                new HourlyUses(other, Trips.always(0), Trips.always(0)),
                engine,
                Trips.always(0),
                new double[][] {bankC});
    }

    @Property(tries = 60)
    void noChargeEntersACellOutsideItsWindow(
            @ForAll Chemistry chemistry,
            @ForAll @DoubleRange(min = -40, max = 70) double bankC,
            @ForAll @DoubleRange(min = 0, max = 1) double start) {
        LedgerBank bank = Trips.bank(chemistry, 1000);
        Ledger ledger = new Ledger(List.of(Trips.day(NIGHTS, 5, 0, 100, bankC)), bank, 500, start);
        Tally tally = new Tally(bank);
        ledger.run(sun(0.6), new int[NIGHTS], false, tally, new double[NIGHTS * Unit.HOURS_PER_DAY]);
        if (!bank.mayCharge(bankC)) {
            assertThat(tally.endWh).isLessThanOrEqualTo(start * bank.energyWh);
        }
    }

    @Property(tries = 30)
    void theChanceIsTheSameInHoursLivedToTheEnd(@ForAll @IntRange(min = 1, max = 130) int runs) {
        Ledger ledger = new Ledger(List.of(Trips.day(NIGHTS, 25, 0, 0, 20)), Trips.bank(Chemistry.LFP, 800), 150, 1);
        ModelWeather weather = Trips.weather(40, 3, NIGHTS, 0.45, 0.12);
        assertThat(Simulation.simulate(ledger, weather, runs).flatRuns())
                .isEqualTo(Simulation.flatRuns(ledger, weather, runs));
    }

    @Test
    void theNumberOfThreadsChangesNoBit() throws Exception {
        List<Double> one = figures(1);
        assertThat(figures(2)).isEqualTo(one);
        assertThat(figures(7)).isEqualTo(one);
    }

    private static List<Double> figures(int threads) throws Exception {
        Ledger ledger = new Ledger(List.of(Trips.day(NIGHTS, 25, 3, 0, 20)), Trips.bank(Chemistry.LFP, 800), 150, 1);
        ModelWeather weather = Trips.weather(40, 3, NIGHTS, 0.45, 0.12);
        ForkJoinPool pool = new ForkJoinPool(threads);
        try {
            return pool.submit(() -> {
                        Outcome outcome = Simulation.simulate(ledger, weather, 777);
                        double[][] bands = outcome.bands().quantiles(0.05, 0.5, 0.95);
                        return List.of(
                                outcome.chance(),
                                outcome.solarWh(),
                                outcome.storageLossWh(),
                                outcome.unmetWh(),
                                bands[0][50],
                                bands[1][99],
                                bands[2][143]);
                    })
                    .get();
        } finally {
            pool.shutdown();
        }
    }

    private static double[] sun(double clearness) {
        ModelWeather weather = Trips.weather(40, 4, NIGHTS, clearness, 0.12);
        double[] sun = new double[weather.hours()];
        weather.fill(0, sun);
        return sun;
    }

    private static int flat(LedgerDay day, Chemistry chemistry, double nominalWh, double solarW) {
        Ledger ledger = new Ledger(List.of(day), Trips.bank(chemistry, nominalWh), solarW, 1);
        return Simulation.flatRuns(ledger, Trips.weather(40, 2, NIGHTS, 0.45, 0.12), 60);
    }
}
