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
            @ForAll @DoubleRange(min = 0, max = 1) double start,
            @ForAll @DoubleRange(min = 0, max = 80) double heaterW) {
        LedgerDay day = Trips.day(NIGHTS, loadW, otherW, 5);
        LedgerBank bank = Trips.bank(chemistry, nominalWh);
        LedgerStay stay = new LedgerStay(day, day.uses.days().get(0), bank, solarW);
        RunWeather sun = sun(0.5, bankC);
        double[] store = new double[sun.boxC.length];
        Tally tally = new Tally(bank);
        CellWarmth cells = new CellWarmth(sun.boxC.length, new LedgerHeater(heaterW, heaterW, 2, 5, 8));
        tally.begin(start * bank.energyWh);
        cells.begin(sun, 0);
        for (int hour = 0; hour < sun.boxC.length; hour++) {
            int local = hour % Unit.HOURS_PER_DAY;
            if (local == 0) {
                cells.fillDay(sun, hour, 0);
            }
            tally.simulate(stay, local, local + 1, hour - local, sun, cells, store);
            tally.accrue(stay, 1.0 / Unit.HOURS_PER_DAY);
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
            @ForAll @DoubleRange(min = -27, max = 15) double offsetK,
            @ForAll @DoubleRange(min = 0, max = 24) double lagHours,
            @ForAll @DoubleRange(min = 0, max = 30) double heaterW) {
        LedgerHeater heater = new LedgerHeater(lagHours > 0 ? heaterW : 0, heaterW / 1.04, 2, 5, lagHours);
        LedgerDay day = changingDay(loadW, otherW, engineW);
        Weather weather = new ModelWeather(List.of(Trips.sky(40, 2, NIGHTS, 0.45, 0.12)), lagHours, 11);
        int plain = flat(day, weather, offsetK, heater, chemistry, nominalWh, solarW);
        assertThat(flat(day, weather, offsetK, heater, chemistry, nominalWh * factor, solarW))
                .isLessThanOrEqualTo(plain);
        assertThat(flat(day, weather, offsetK, heater, chemistry, nominalWh, solarW * factor))
                .isLessThanOrEqualTo(plain);
    }

    /** A drive at ten, what may stop in the evening. */
    private static LedgerDay changingDay(double loadW, double otherW, double engineW) {
        double[] engine = Trips.always(0);
        engine[10] = engineW;
        double[] other = Trips.always(0);
        for (int hour = 0; hour < other.length; hour++) {
            other[hour] = hour >= 18 ? otherW : 0;
        }
        return new LedgerDay(
                NIGHTS,
                HourlyUses.steady(loadW),
                new HourlyUses(other, Trips.always(0), Trips.always(0)),
                engine,
                Trips.always(0));
    }

    @Property(tries = 60)
    void noChargeEntersACellOutsideItsWindow(
            @ForAll Chemistry chemistry,
            @ForAll @DoubleRange(min = -40, max = 70) double bankC,
            @ForAll @DoubleRange(min = 0, max = 1) double start) {
        LedgerBank bank = Trips.bank(chemistry, 1000);
        Ledger ledger = new Ledger(List.of(Trips.day(NIGHTS, 5, 0, 100)), bank, 500, start);
        Tally tally = Trips.run(ledger, sun(0.6, bankC));
        if (!bank.mayCharge(bankC)) {
            assertThat(tally.endWh).isLessThanOrEqualTo(start * bank.energyWh);
        }
    }

    @Property(tries = 30)
    void theChanceIsTheSameInHoursLivedToTheEnd(@ForAll @IntRange(min = 1, max = 130) int runs) {
        Ledger ledger =
                new Ledger(List.of(Trips.day(NIGHTS, 25, 0, 0).warmerBy(-12)), Trips.bank(Chemistry.LFP, 800), 150, 1);
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
        Ledger ledger =
                new Ledger(List.of(Trips.day(NIGHTS, 25, 3, 0).warmerBy(-12)), Trips.bank(Chemistry.LFP, 800), 150, 1);
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

    private static RunWeather sun(double clearness, double airC) {
        return Trips.first(Trips.weather(40, 4, NIGHTS, clearness, 0.12), airC);
    }

    private static int flat(
            LedgerDay day,
            Weather weather,
            double offsetK,
            LedgerHeater heater,
            Chemistry chemistry,
            double nominalWh,
            double solarW) {
        Ledger ledger = new Ledger(List.of(day.warmerBy(offsetK)), Trips.bank(chemistry, nominalWh), heater, solarW, 1);
        return Simulation.flatRuns(ledger, weather, 60);
    }
}
