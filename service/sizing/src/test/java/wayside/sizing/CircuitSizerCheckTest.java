package wayside.sizing;

import static org.assertj.core.api.Assertions.assertThat;
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
import wayside.sizing.trace.Caution;
import wayside.sizing.trace.Parameter;
import wayside.sizing.trace.Unit;
import wayside.sizing.wiring.GovernedBy;
import wayside.sizing.wiring.SizedCircuit;

/** Whole circuits against published worked examples and facts of the trade. */
class CircuitSizerCheckTest {
    // Source: ABYC E-11 worked example in a reprint: 10 A, 11 ft + 10 ft, 12 V, 3 %: CM 6,271, printed answer 10 AWG;
    // the same at 10 %: CM 1,881, printed answer 16 AWG.
    @Test
    void agreesWithTheWorkedExampleAtThreeAndTenPercent() {
        double oneWayM = 21 * 0.3048 / 2;
        assertThat(awg(run("example", 10, oneWayM, 12, 3))).isEqualTo("10 AWG");
        // Through the door a 10 A fuse is protected by 16 AWG of 105 C, and the drop asks for no more.
        assertThat(awg(run("example", 10, oneWayM, 12, 10))).isEqualTo("16 AWG");
    }

    // Source: trade page on wire sizing: 12 V, 10 %, 40 ft round trip at 45 A (1,800 ft A). Its 8 AWG has 16,510
    // circular mil as round wire; on SAE minimum areas (14,810) the CM of 16,125 asks for one size more.
    @Test
    void takesTheThickerSizeWhereTheTwoAreaSystemsDisagree() {
        assertThat(awg(run("example", 45, 20 * 0.3048, 12, 10))).isEqualTo("6 AWG");
    }

    // Source: the same page: 24 V, 3 %, 10 ft round trip at 100 A, printed answer 6 AWG (CM 14,931).
    @Test
    void agreesWithTheWorkedExampleAtTwentyFourVolts() {
        assertThat(awg(run("example", 100, 5 * 0.3048, 24, 3))).isEqualTo("6 AWG");
    }

    // Common practice, no source: a lithium bank's main fuse must break 20 kA; blades and strips don't.
    @Test
    void putsAFuseOfHighBreakingCapacityAtALithiumBank() {
        SizedCircuit.Wired main = wired(with(CircuitRun.of("inverter", 180, 1.2), 12, lithium(200)));
        assertThat(main.fuse().link().type()).isEqualTo("class T");
        assertThat(main.fuse().refused())
                .extracting(refusal -> refusal.link().type())
                .containsExactly("blade 32 V", "blade 58 V", "strip", "single-bolt", "photovoltaic cartridge");
        assertThat(main.duty().interruptA().value()).isEqualTo(20_000);
    }

    // Source: ISO 8820-3:2015 and 8820-5:2015, scopes: blades come for 32 V and 58 V, strips for 32 V only.
    @Test
    void refusesThirtyTwoVoltFusesAtFortyEightVolts() {
        SizedCircuit.Wired small = wired(with(CircuitRun.of("fridge", 4, 3), 48, new CircuitFeed.Branch()));
        assertThat(small.fuse().link().type()).isEqualTo("blade 58 V");
        SizedCircuit.Wired large = wired(with(CircuitRun.of("inverter", 120, 2), 48, new CircuitFeed.Branch()));
        assertThat(large.fuse().link().type()).isEqualTo("single-bolt");
        assertThat(large.fuse().refused())
                .extracting(refusal -> refusal.link().type())
                .containsExactly("blade 32 V", "blade 58 V", "strip");
    }

    // Source: ABYC E-11, Table V.A, as reprinted: main devices 1,500 A up to 650 A cold cranking, 3,000 A up to 1,100
    // A, 5,000 A above; 20 kA above 2,200 A or 500 Ah.
    @Test
    void asksForTheBreakingCapacityOfTheBank() {
        assertThat(interruptA(leadAcid(100, 650))).isEqualTo(1500);
        assertThat(interruptA(leadAcid(100, 651))).isEqualTo(3000);
        assertThat(interruptA(leadAcid(200, 1100.5))).isEqualTo(5000);
        assertThat(interruptA(leadAcid(200, 2201))).isEqualTo(20_000);
        assertThat(interruptA(leadAcid(501, 800))).isEqualTo(20_000);
    }

    @Test
    void reportsAnImpossibleCircuitAsAResult() {
        SizedCircuit circuit = CircuitSizer.size(List.of(run("winch", 600, 20, 12, 3)))
                .result()
                .get(0);
        assertThat(circuit).isInstanceOfSatisfying(SizedCircuit.NotFeasible.class, no -> {
            assertThat(no.shortfall().code()).isEqualTo("too-long");
            assertThat(no.shortfall().message().find("roundTrip"))
                    .hasValue(Parameter.number("roundTrip", 40, Unit.METRE));
        });
    }

    @Test
    void saysTheRoundTripAndWhatGoverned() {
        SizedCircuit.Wired fridge = wired(CircuitRun.of("fridge", 5, 4));
        assertThat(fridge.duty().roundTripM().value()).isCloseTo(8, within(1e-12));
        assertThat(fridge.duty().designCurrentA().value()).isCloseTo(6.25, within(1e-12));
        assertThat(fridge.fuse().ratingA().value()).isEqualTo(7.5);
        assertThat(fridge.governedBy()).isEqualTo(GovernedBy.VOLTAGE_DROP);
    }

    // 60 A, all that 10 AWG of 105 C may carry, over 0.78 m: 2 x 0.78 m x 60 A x 4.46 Ohm/km = 0.417 V, 3.5 % of 12 V,
    // where the constant for cool copper gives 2.9 %.
    // Source: NFPA 70-2023, chapter 9 Table 8, 10 AWG stranded 1.24 Ohm per 1,000 ft at 75 C.
    @Test
    void saysWhenWarmCopperLosesMoreThanTheRuleReckons() {
        CircuitRun run = run("hob", 60, 0.78, 12, 3);
        assertThat(awg(run)).isEqualTo("10 AWG");
        assertThat(CircuitSizer.size(List.of(run)).cautions())
                .extracting(Caution::code)
                .contains("warm-copper");
        assertThat(CircuitSizer.size(List.of(CircuitRun.of("fridge", 5, 4))).cautions())
                .extracting(Caution::code)
                .doesNotContain("warm-copper");
    }

    private static double interruptA(CircuitFeed feed) {
        return wired(with(CircuitRun.of("main", 50, 1), 12, feed))
                .duty()
                .interruptA()
                .value();
    }

    private static CircuitFeed lithium(double capacityAh) {
        return new CircuitFeed.Bank(At.ROOT.field("bank"), Chemistry.LFP, capacityAh, OptionalDouble.empty());
    }

    private static CircuitFeed leadAcid(double capacityAh, double coldCrankingA) {
        return new CircuitFeed.Bank(At.ROOT.field("bank"), Chemistry.AGM, capacityAh, OptionalDouble.of(coldCrankingA));
    }

    private static String awg(CircuitRun run) {
        return wired(run).conductor().size().title();
    }

    private static SizedCircuit.Wired wired(CircuitRun run) {
        SizedCircuit circuit = CircuitSizer.size(List.of(run)).result().get(0);
        assertThat(circuit).isInstanceOf(SizedCircuit.Wired.class);
        return (SizedCircuit.Wired) circuit;
    }

    private static CircuitRun run(String name, double currentA, double lengthM, double volts, double limitPercent) {
        return new CircuitRun(
                At.ROOT,
                name,
                new CircuitCurrent.Amps(currentA),
                Optional.of(false),
                lengthM,
                OptionalDouble.of(volts),
                OptionalDouble.of(limitPercent),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalInt.empty(),
                Optional.empty(),
                Optional.of("abyc-e11"),
                new CircuitFeed.Branch());
    }

    private static CircuitRun with(CircuitRun run, double volts, CircuitFeed feed) {
        return new CircuitRun(
                At.ROOT,
                run.name(),
                run.current(),
                run.continuous(),
                run.lengthM(),
                OptionalDouble.of(volts),
                run.voltageDropLimitPercent(),
                run.insulationC(),
                run.ambientC(),
                run.bundledConductors(),
                run.engineSpace(),
                run.rules(),
                feed);
    }
}
