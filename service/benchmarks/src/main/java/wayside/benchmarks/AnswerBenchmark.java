package wayside.benchmarks;

import java.util.List;
import java.util.OptionalDouble;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import wayside.sizing.EnduranceSimulator;
import wayside.sizing.SystemSizer;
import wayside.sizing.brief.At;
import wayside.sizing.brief.BuiltSystem;
import wayside.sizing.brief.Chemistry;
import wayside.sizing.brief.EnduranceBrief;
import wayside.sizing.brief.InverterSpec;
import wayside.sizing.brief.Load;
import wayside.sizing.brief.PanelMount;
import wayside.sizing.brief.Place;
import wayside.sizing.brief.Sampling;
import wayside.sizing.brief.Stay;
import wayside.sizing.brief.SystemBrief;
import wayside.sizing.brief.SystemWishes;
import wayside.sizing.brief.Target;
import wayside.sizing.brief.Tier;
import wayside.sizing.brief.Trip;

/** Whole answers of the core, on all cores. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 3, time = 1)
public class AnswerBenchmark {
    private final Load fridge = Load.dc("fridge", 45, 24).withDuty(0.5);
    private final Load laptop = Load.ac("laptop", 60, 3).of(Tier.COMFORT);
    private final Load lights = Load.dc("lights", 12, 4);

    private EnduranceBrief endurance(int nights, int runs, Load... loads) {
        BuiltSystem system = new BuiltSystem(
                At.ROOT.field("system"),
                12,
                Chemistry.LFP,
                1280,
                OptionalDouble.of(200),
                PanelMount.FLAT,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                InverterSpec.OPEN.onFor(3),
                OptionalDouble.of(2));
        return EnduranceBrief.of(system, trip(nights), loads).in(Sampling.of(runs, 0));
    }

    private static Trip trip(int nights) {
        return Trip.of(Stay.of(Place.of(45, 7), 5, nights));
    }

    private SystemBrief wish(Target target) {
        return new SystemBrief(
                At.ROOT,
                List.of(fridge, laptop, lights),
                trip(14),
                SystemWishes.open(At.ROOT.field("system")),
                target,
                Sampling.OPEN);
    }

    /** 2,000 runs of 14 days with all that stands beside the chance. */
    @Benchmark
    public Object endurance14Nights2000Runs() {
        return EnduranceSimulator.simulate(endurance(14, 2000, fridge, laptop, lights));
    }

    /** Twice the runs. */
    @Benchmark
    public Object endurance14Nights4000Runs() {
        return EnduranceSimulator.simulate(endurance(14, 4000, fridge, laptop, lights));
    }

    /** Four times the runs. */
    @Benchmark
    public Object endurance14Nights8000Runs() {
        return EnduranceSimulator.simulate(endurance(14, 8000, fridge, laptop, lights));
    }

    /** Twice the hours. */
    @Benchmark
    public Object endurance28Nights2000Runs() {
        return EnduranceSimulator.simulate(endurance(28, 2000, fridge, laptop, lights));
    }

    /** Four times the hours. */
    @Benchmark
    public Object endurance56Nights2000Runs() {
        return EnduranceSimulator.simulate(endurance(56, 2000, fridge, laptop, lights));
    }

    /** Sixty loads. */
    @Benchmark
    public Object endurance14Nights2000RunsOf60Loads() {
        Load[] many = new Load[60];
        for (int i = 0; i < many.length; i++) {
            many[i] = Load.dc("load " + i, 1, 12);
        }
        return EnduranceSimulator.simulate(endurance(14, 2000, many));
    }

    /** A system by days of autonomy and the worst month. */
    @Benchmark
    public Object recommendation() {
        return SystemSizer.size(wish(Target.OPEN));
    }

    /** The same by an accepted chance of one in twenty. */
    @Benchmark
    public Object recommendationByChance() {
        return SystemSizer.size(wish(Target.chance(0.05)));
    }
}
