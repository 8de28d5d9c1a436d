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
import wayside.sizing.brief.Chemistry;
import wayside.sizing.brief.PanelMount;
import wayside.sizing.brief.Place;
import wayside.sizing.brief.Sky;
import wayside.sizing.endurance.HourlyUses;
import wayside.sizing.endurance.Ledger;
import wayside.sizing.endurance.LedgerBank;
import wayside.sizing.endurance.LedgerDay;
import wayside.sizing.endurance.ModelWeather;
import wayside.sizing.endurance.Simulation;
import wayside.sizing.endurance.StaySky;
import wayside.sizing.solar.ArrayModel;
import wayside.sizing.solar.MonthAt;
import wayside.sizing.solar.SkyMonth;
import wayside.sizing.storage.ChemistryData;

/** Simulated hours per second on one core, weather and all, beside the calls that no such simulation can do without. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.Throughput)
@OutputTimeUnit(TimeUnit.SECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 3, time = 1)
public class LedgerBenchmark {
    private static final int RUNS = 200;
    private static final int NIGHTS = 14;
    private static final int HOURS = RUNS * NIGHTS * 24;
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
                Place.of(LATITUDE, 7),
                4,
                Optional.of(new Sky.Clearness(0.45)),
                Optional.of(new Ambient(10, 8)),
                "stay",
                "/stay",
                "/place");
        ArrayModel array = ArrayModel.of(PanelMount.of(tiltDegrees, 180, 0), "/panel", LATITUDE);
        weather = new ModelWeather(List.of(new StaySky(LATITUDE, 4, NIGHTS, SkyMonth.of(at), array, 0.12, true)), 1);
        double[] none = new double[24];
        LedgerDay day = new LedgerDay(NIGHTS, HourlyUses.steady(25), HourlyUses.steady(5), none, none, new double[24]);
        ledger = new Ledger(List.of(day), new LedgerBank(ChemistryData.of(Chemistry.LFP), 1280, 1, 1.06), 200, 1);
    }

    @TearDown
    public void end() {
        oneCore.shutdown();
    }

    /** Weather, ledger, bands and books. */
    @Benchmark
    @OperationsPerInvocation(HOURS)
    public Object simulatedHours() throws Exception {
        return oneCore.submit(() -> Simulation.simulate(ledger, weather, RUNS)).get();
    }

    /** Per day: two exponentials and two logarithms of the weather, one exponential of the taper, a root each sunny hour. */
    @Benchmark
    @OperationsPerInvocation(HOURS)
    public void transcendentalFloor(Blackhole hole) {
        for (int day = 0; day < RUNS * NIGHTS; day++) {
            double x = 0.1 + day / (double) (RUNS * NIGHTS);
            hole.consume(Math.exp(-x) + Math.expm1(x) + Math.log1p(x) + Math.log(x) + Math.exp(-2 * x));
            double sum = 0;
            for (int hour = 0; hour < 13; hour++) {
                sum += Math.sqrt(x + hour);
            }
            hole.consume(sum);
        }
    }
}
