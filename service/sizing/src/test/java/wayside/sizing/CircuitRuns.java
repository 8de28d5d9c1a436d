package wayside.sizing;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import wayside.sizing.brief.At;
import wayside.sizing.brief.Chemistry;
import wayside.sizing.brief.CircuitCurrent;
import wayside.sizing.brief.CircuitFeed;
import wayside.sizing.brief.CircuitRun;

/** Circuits to try: stated ones with a few fields changed, and random ones of every kind. */
final class CircuitRuns {
    private CircuitRuns() {}

    static CircuitRun with(CircuitRun run, double currentA, double lengthM) {
        return new CircuitRun(
                run.at(),
                run.name(),
                new CircuitCurrent.Amps(currentA),
                run.continuous(),
                lengthM,
                run.voltageV(),
                run.voltageDropLimitPercent(),
                run.insulationC(),
                run.ambientC(),
                run.bundledConductors(),
                run.engineSpace(),
                run.rules(),
                run.feed());
    }

    /** The same circuit, given there. */
    static CircuitRun at(At at, CircuitRun run) {
        return new CircuitRun(
                at,
                run.name(),
                run.current(),
                run.continuous(),
                run.lengthM(),
                run.voltageV(),
                run.voltageDropLimitPercent(),
                run.insulationC(),
                run.ambientC(),
                run.bundledConductors(),
                run.engineSpace(),
                run.rules(),
                run.feed());
    }

    static CircuitRun bundled(CircuitRun run, int conductors) {
        return new CircuitRun(
                run.at(),
                run.name(),
                run.current(),
                run.continuous(),
                run.lengthM(),
                run.voltageV(),
                run.voltageDropLimitPercent(),
                run.insulationC(),
                run.ambientC(),
                OptionalInt.of(conductors),
                run.engineSpace(),
                run.rules(),
                run.feed());
    }

    static CircuitRun under(CircuitRun run, String rules) {
        return new CircuitRun(
                run.at(),
                run.name(),
                run.current(),
                run.continuous(),
                run.lengthM(),
                run.voltageV(),
                run.voltageDropLimitPercent(),
                run.insulationC(),
                run.ambientC(),
                run.bundledConductors(),
                run.engineSpace(),
                Optional.of(rules),
                run.feed());
    }

    static double currentA(CircuitRun run) {
        return ((CircuitCurrent.Amps) run.current()).currentA();
    }

    /** From a reading lamp to a winch, from half a metre to a long trailer, cool to hot, alone to a thick harness. */
    static Arbitrary<CircuitRun> any() {
        return Combinators.combine(
                        Arbitraries.doubles().between(0.05, 400),
                        Arbitraries.doubles().between(0.2, 30),
                        Arbitraries.of(12.0, 24.0, 48.0),
                        Arbitraries.of(OptionalDouble.empty(), OptionalDouble.of(1), OptionalDouble.of(10)),
                        Arbitraries.of(60.0, 75.0, 80.0, 90.0, 105.0, 125.0, 200.0),
                        Arbitraries.doubles().between(-20, 55),
                        Arbitraries.integers().between(1, 45),
                        flags())
                .as(CircuitRuns::run);
    }

    private static Arbitrary<Flags> flags() {
        return Combinators.combine(
                        Arbitraries.of(true, false),
                        Arbitraries.of(true, false),
                        Arbitraries.of("abyc-e11", "nec"),
                        Arbitraries.<CircuitFeed>of(
                                new CircuitFeed.Branch(),
                                new CircuitFeed.ShortCircuit(1500),
                                new CircuitFeed.Bank(At.ROOT.field("bank"), Chemistry.LFP, 280, OptionalDouble.empty()),
                                new CircuitFeed.Bank(
                                        At.ROOT.field("bank"), Chemistry.AGM, 200, OptionalDouble.of(900))))
                .as(Flags::new);
    }

    private static CircuitRun run(
            double currentA,
            double lengthM,
            double voltageV,
            OptionalDouble limitPercent,
            double insulationC,
            double ambientC,
            int bundled,
            Flags flags) {
        return new CircuitRun(
                At.ROOT,
                "any",
                new CircuitCurrent.Amps(currentA),
                Optional.of(flags.continuous()),
                lengthM,
                OptionalDouble.of(voltageV),
                limitPercent,
                OptionalDouble.of(insulationC),
                OptionalDouble.of(ambientC),
                OptionalInt.of(bundled),
                Optional.of(flags.engineSpace()),
                Optional.of(flags.rules()),
                flags.feed());
    }

    private record Flags(boolean continuous, boolean engineSpace, String rules, CircuitFeed feed) {}
}
