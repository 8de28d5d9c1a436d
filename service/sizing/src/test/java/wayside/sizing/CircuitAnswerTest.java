package wayside.sizing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import wayside.sizing.brief.At;
import wayside.sizing.brief.Chemistry;
import wayside.sizing.brief.CircuitCurrent;
import wayside.sizing.brief.CircuitFeed;
import wayside.sizing.brief.CircuitRun;
import wayside.sizing.trace.Answer;
import wayside.sizing.trace.Caution;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Unit;
import wayside.sizing.wiring.CircuitSizing;
import wayside.sizing.wiring.CircuitTask;
import wayside.sizing.wiring.Feed;
import wayside.sizing.wiring.RuleSets;
import wayside.sizing.wiring.SizedCircuit;

/** What an answer on circuits says beside its figures. */
class CircuitAnswerTest {
    private static final CircuitFeed BRANCH = new CircuitFeed.Branch();

    @Test
    void namesEveryDefaultWithTheFieldThatOverridesIt() {
        Answer<List<SizedCircuit>> answer = CircuitSizer.size(
                List.of(CircuitRuns.at(At.ROOT.field("circuits").entry(0), CircuitRun.of("fridge", 5, 4))));
        assertThat(TracedValues.assumptions(answer))
                .extracting(assumption -> assumption.field().orElse("a convention"))
                .containsExactlyInAnyOrder(
                        "/circuits/0/rules",
                        "/circuits/0/continuous",
                        "/circuits/0/engineSpace",
                        "/circuits/0/voltageV",
                        "/circuits/0/voltageDropLimitPercent",
                        "/circuits/0/insulationC",
                        "/circuits/0/ambientC",
                        "/circuits/0/bundledConductors",
                        "/circuits/0/bank");
    }

    @Test
    void assumesNothingThatTheRequestStates() {
        Answer<List<SizedCircuit>> answer =
                CircuitSizer.size(List.of(stated(5, 12, false, new CircuitFeed.ShortCircuit(900))));
        assertThat(TracedValues.assumptions(answer)).isEmpty();
    }

    // Common practice, no source: a nearly empty 12 V lead-acid battery stands at 10.5 V, and power takes most current
    // then.
    @Test
    void takesTheCurrentOfAPowerWithTheBatteryNearlyEmpty() {
        CircuitRun run = stated(5, 12, false, BRANCH);
        CircuitRun watts = new CircuitRun(
                run.at(),
                run.name(),
                new CircuitCurrent.Watts(105),
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
        SizedCircuit circuit = CircuitSizer.of(watts);
        assertThat(circuit.duty().currentA().value()).isCloseTo(10, within(1e-12));
    }

    @Test
    void everyAnswerTellsOfTheFuseAtTheSource() {
        assertThat(codes(CircuitRun.of("fridge", 5, 4)))
                .containsExactlyInAnyOrder("fuse-at-source", "local-code", "area-not-diameter", "interrupt-rating");
    }

    @Test
    void tellsOfWhatTheCircuitBringsWithIt() {
        assertThat(codes(stated(100, 48, true, lithium(600))))
                .contains("direct-current-arc", "engine-space", "fuse-per-battery")
                .doesNotContain("interrupt-rating");
        assertThat(codes(stated(420, 12, false, lithium(400)))).contains("parallel-conductors");
    }

    @Test
    void saysACautionOnceForManyCircuits() {
        List<Caution> cautions = CircuitSizer.size(List.of(CircuitRun.of("fridge", 5, 4), CircuitRun.of("pump", 7, 3)))
                .cautions();
        assertThat(cautions).doesNotHaveDuplicates().hasSize(4);
        assertThat(cautions.get(0).code()).isEqualTo("fuse-at-source");
    }

    // A 600 A winch asks for 750 A, above the largest rating of NFPA 70-2023, 240.6(A) for devices of both kinds.
    @Test
    void saysWhenNoFuseIsLargeEnough() {
        assertThat(shortfall(CircuitRun.of("winch", 600, 2))).isEqualTo("no-fuse-rating");
    }

    @Test
    void saysWhenItIsTooHotForTheInsulation() {
        CircuitRun run = new CircuitRun(
                At.ROOT,
                "heater",
                new CircuitCurrent.Amps(5),
                Optional.of(true),
                2,
                OptionalDouble.of(12),
                OptionalDouble.empty(),
                OptionalDouble.of(60),
                OptionalDouble.of(70),
                OptionalInt.empty(),
                Optional.of(false),
                Optional.of("nec"),
                BRANCH);
        assertThat(shortfall(run)).isEqualTo("too-hot");
    }

    @Test
    void saysWhenNoKindOfFuseBreaksTheShortCircuit() {
        assertThat(shortfall(stated(50, 12, false, new CircuitFeed.ShortCircuit(25_000))))
                .isEqualTo("no-fuse-type");
    }

    @Test
    void sizesACircuitOfFiguresThatWereWorkedOut() {
        Derived current = Derived.given("inverter: battery current", 150, Unit.AMPERE, "/x");
        CircuitTask task = CircuitTask.of(
                        "inverter",
                        Optional.of(At.ROOT.field("system").field("inverter")),
                        current,
                        Derived.given("length", 1.2, Unit.METRE, "/x"),
                        Derived.given("bus", 12, Unit.VOLT, "/x"))
                .under(RuleSets.of("nec"))
                .fedBy(new Feed.ShortCircuit(Derived.given("short circuit", 4000, Unit.AMPERE, "/x")));
        SizedCircuit circuit = CircuitSizing.of(task);
        assertThat(circuit.duty().currentA()).isSameAs(current);
        assertThat(circuit.duty().rules().code()).isEqualTo("nec");
        assertThat(circuit.duty().interruptA().value()).isEqualTo(4000);
    }

    @Test
    void refusesAnUnknownRuleSet() {
        CircuitRun run = stated(5, 12, false, BRANCH);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> CircuitSizer.of(CircuitRuns.under(run, "iso")))
                .withMessageContaining("iso");
    }

    private static String shortfall(CircuitRun run) {
        SizedCircuit circuit = CircuitSizer.of(run);
        assertThat(circuit).isInstanceOf(SizedCircuit.NotFeasible.class);
        return ((SizedCircuit.NotFeasible) circuit).shortfall().code();
    }

    private static List<String> codes(CircuitRun run) {
        return CircuitSizer.size(List.of(run)).cautions().stream()
                .map(Caution::code)
                .toList();
    }

    private static CircuitFeed lithium(double capacityAh) {
        return new CircuitFeed.Bank(At.ROOT.field("bank"), Chemistry.LFP, capacityAh, OptionalDouble.empty());
    }

    private static CircuitRun stated(double currentA, double voltageV, boolean engineSpace, CircuitFeed feed) {
        return new CircuitRun(
                At.ROOT,
                "stated",
                new CircuitCurrent.Amps(currentA),
                Optional.of(true),
                2,
                OptionalDouble.of(voltageV),
                OptionalDouble.of(10),
                OptionalDouble.of(105),
                OptionalDouble.of(30),
                OptionalInt.of(2),
                Optional.of(engineSpace),
                Optional.of("abyc-e11"),
                feed);
    }
}
