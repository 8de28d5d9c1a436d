package wayside.benchmarks;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;
import org.openjdk.jmh.infra.Blackhole;
import wayside.sizing.brief.Ambient;
import wayside.sizing.brief.At;
import wayside.sizing.brief.Chemistry;
import wayside.sizing.brief.PanelMount;
import wayside.sizing.brief.Place;
import wayside.sizing.brief.Sky;
import wayside.sizing.ledger.HourlyUses;
import wayside.sizing.ledger.Ledger;
import wayside.sizing.ledger.LedgerBank;
import wayside.sizing.ledger.LedgerDay;
import wayside.sizing.ledger.ModelWeather;
import wayside.sizing.ledger.Simulation;
import wayside.sizing.ledger.SkyScatter;
import wayside.sizing.ledger.StaySky;
import wayside.sizing.solar.array.ArrayModel;
import wayside.sizing.solar.sky.MonthAt;
import wayside.sizing.solar.sky.SkyMonth;
import wayside.sizing.storage.ChemistryData;
import wayside.sizing.trace.Unit;

/**
 * Simulated hours per second on one core, weather and all, beside the calls that no such simulation can do without. The system
 * is one that a buyer might take: it runs flat in one life of thirteen.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.Throughput)
@OutputTimeUnit(TimeUnit.SECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 3, time = 1)
public class LedgerBenchmark {
    private static final int RUNS = 200;
    private static final int NIGHTS = 14;
    private static final int HOURS = RUNS * NIGHTS * Unit.HOURS_PER_DAY;
    private static final int SUNNY_HOURS = 14;
    /** Of the nights of a life, those before which the charge meets the taper within an hour: 0.77, counted. */
    private static final int TAPERS = 11;

    private static final double LATITUDE = 45;

    /** Flat on the roof, or tilted. */
    @Param({"0", "30"})
    public double tiltDegrees;

    private ForkJoinPool oneCore = new ForkJoinPool(1);
    private Ledger ledger;
    private ModelWeather weather;

    @Setup
    public void prepare() {
        MonthAt at = new MonthAt(
                At.ROOT,
                Place.of(LATITUDE, 7),
                4,
                Optional.of(new Sky.Clearness(0.45)),
                Optional.of(new Ambient(10, 8)),
                "stay");
        ArrayModel array = ArrayModel.of(PanelMount.of(tiltDegrees, 180, 0), LATITUDE);
        weather = new ModelWeather(
                List.of(new StaySky(LATITUDE, 4, NIGHTS, SkyMonth.of(at), array, SkyScatter.of(0.12, 0.27))), 8, 1);
        double[] none = new double[Unit.HOURS_PER_DAY];
        LedgerDay day = new LedgerDay(NIGHTS, HourlyUses.steady(25), HourlyUses.steady(5), none, none);
        ledger = new Ledger(List.of(day), new LedgerBank(ChemistryData.of(Chemistry.LFP), 1280, 1, 1.06), 300, 1);
    }

    @TearDown
    public void end() {
        oneCore.shutdown();
    }

    /** Weather, ledger, bands and sums. */
    @Benchmark
    @OperationsPerInvocation(HOURS)
    public Object simulatedHours() throws Exception {
        return oneCore.submit(() -> Simulation.simulate(ledger, weather, RUNS)).get();
    }

    /**
     * The transcendental calls of the simulated hours, as often as this model needs them, and nothing else. In a life: the
     * exponentials of its two sky factors; two more and a root of its days' distribution; 17 normal draws, of which 15 % lie in
     * the tails and take a logarithm and a root. On a day: the exponential of Phi, the logarithm of Bendt's distribution
     * turned round, and on {@link #TAPERS} of 14 days the exponential with which charge meets the taper within an hour. In a
     * sunny hour on a tilted plane: the root of the HDKR model; on a flat one none.
     *
     * <p>What it leaves out is most of the work: 24 hours a day of comparing, multiplying and adding, each waiting for the
     * store that the hour before left, and the bookkeeping.
     */
    @Benchmark
    @OperationsPerInvocation(HOURS)
    public void transcendentalFloor(Blackhole hole) {
        for (int run = 0; run < RUNS; run++) {
            double x = 0.1 + run / (double) RUNS;
            double sum = Math.exp(-x) + Math.exp(-x / 2) + Math.exp(-1.5 * x) + Math.expm1(x) + Math.sqrt(x);
            int tails = run % 20 < 11 ? 3 : 2;
            for (int draw = 0; draw < tails; draw++) {
                sum += Math.sqrt(-Math.log(0.05 * x / (draw + 1)));
            }
            for (int day = 0; day < NIGHTS; day++) {
                double y = x + 0.05 * day;
                sum += Math.exp(-y) + Math.log(1 + y) + (day < TAPERS ? Math.exp(-2 * y) : 0);
                sum += tiltDegrees > 0 ? roots(y) : 0;
            }
            hole.consume(sum);
        }
    }

    /**
     * The transcendental calls of the hour's formulas as they are printed, made hour by hour, and nothing else: what the
     * simulation avoids by working out once per stay what no weather changes. In an hour: the cosines of the sun's angle and of
     * the air's wave. In a sunny hour: the glass's exponential and two roots, and on a tilted plane the root of the HDKR model.
     * On a day: sine and cosine of the declination, arc cosine and sine of the sunset hour angle, the exponential of Phi, Bendt's
     * exponential and logarithm, the draw's logarithm and root in the tails, the taper's exponential.
     */
    @Benchmark
    @OperationsPerInvocation(HOURS)
    public void callsOfTheFormulas(Blackhole hole) {
        for (int date = 0; date < RUNS * NIGHTS; date++) {
            double y = 0.1 + date / (double) (RUNS * NIGHTS);
            double sum = Math.sin(y) + Math.cos(y) + Math.acos(-0.4 * y) + Math.sin(2 * y);
            sum += Math.exp(-y) + Math.expm1(y) + Math.log1p(y) + Math.exp(-2 * y);
            sum += date % 7 == 0 ? Math.sqrt(-Math.log(0.05 * y)) : 0;
            for (int hour = 0; hour < Unit.HOURS_PER_DAY; hour++) {
                sum += Math.cos(0.2618 * hour - y) + Math.cos(0.2618 * hour + y);
                if (hour >= 5 && hour < 5 + SUNNY_HOURS) {
                    sum += Math.exp(-y / hour) + Math.sqrt(y + hour) + Math.sqrt(2 * y + hour);
                    sum += tiltDegrees > 0 ? Math.sqrt(3 * y + hour) : 0;
                }
            }
            hole.consume(sum);
        }
    }

    private static double roots(double y) {
        double sum = 0;
        for (int hour = 0; hour < SUNNY_HOURS; hour++) {
            sum += Math.sqrt(y + hour);
        }
        return sum;
    }
}
