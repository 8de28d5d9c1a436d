package wayside.sizing.wiring;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Unit;

/** Corrected ampacities, fuse limits and resistances of both rule sets against printed figures. */
class RuleSetCheckTest {
    private static final RuleSet ABYC = RuleSets.of("abyc-e11");
    private static final RuleSet NEC = RuleSets.of("nec");
    private static final ConductorLabels LABELS = new ConductorLabels("lamp", "one conductor");

    // Source: code course example on NFPA 70 ambient correction: 10 AWG of 90 C at 120 F: 40 A x 0.82 = 32.8 A.
    @Test
    void agreesWithTheWorkedExampleOnAHotAttic() {
        double celsius = (120 - 32) / 1.8;
        assertThat(ampacityA(NEC, Gauge.of("10"), place(90, celsius, 2, false)).value())
                .isCloseTo(32.8, within(1e-9));
    }

    // Source: 33 CFR 183.425, Table 5, 105 C inside engine spaces, as reprinted. The print is rounded either way:
    // tolerance 1 A.
    @ParameterizedTest
    @CsvSource({
        "18, 17",
        "16, 21",
        "14, 30",
        "12, 38",
        "10, 51",
        "8, 68",
        "6, 102",
        "4, 136",
        "2, 178",
        "1, 208",
        "1/0, 242",
        "2/0, 280",
        "3/0, 327",
        "4/0, 378"
    })
    void agreesWithThePrintedEngineSpaceColumn(String awg, double printedA) {
        assertThat(ampacityA(ABYC, Gauge.of(awg), place(105, 50, 2, true)).value())
                .isCloseTo(printedA, within(1.0));
    }

    // Source: ABYC E-11 and NFPA 70-2023, Table 310.15(C)(1), bundling steps.
    @ParameterizedTest
    @CsvSource({
        "1, 1, 1",
        "2, 1, 1",
        "3, 0.7, 1",
        "4, 0.6, 0.8",
        "6, 0.6, 0.8",
        "7, 0.5, 0.7",
        "10, 0.5, 0.5",
        "24, 0.5, 0.45",
        "25, 0.4, 0.45",
        "41, 0.4, 0.35",
        "500, 0.4, 0.35"
    })
    void derateABundleByItsPrintedStep(int conductors, double abyc, double nec) {
        Gauge ten = Gauge.of("10");
        assertThat(ampacityA(ABYC, ten, place(105, 30, conductors, false)).value())
                .isCloseTo(60 * abyc, within(1e-9));
        assertThat(ampacityA(NEC, ten, place(90, 30, conductors, false)).value())
                .isCloseTo(40 * nec, within(1e-9));
    }

    // Source: NFPA 70-2023, 240.4(D): 15, 20 and 30 A on 14, 12 and 10 AWG whatever the insulation.
    @ParameterizedTest
    @CsvSource({"14, 15", "12, 20", "10, 30"})
    void necKeepsSmallConductorsOnSmallFuses(String awg, double limitA) {
        Gauge gauge = Gauge.of(awg);
        Derived ampacity = ampacityA(NEC, gauge, place(90, 30, 2, false));
        assertThat(ampacity.value()).isGreaterThan(limitA);
        assertThat(NEC.fuseLimitA(LABELS, gauge, ampacity).value()).isEqualTo(limitA);
    }

    // Source: 33 CFR 183.455(c)(1): up to 150 % of the ampacity; reported, never used.
    @Test
    void abycReportsThePermittedFuseButStaysWithinTheAmpacity() {
        Derived ampacity = ampacityA(ABYC, Gauge.of("10"), place(105, 30, 2, false));
        assertThat(ABYC.permittedFuseA(LABELS, Gauge.of("10"), ampacity).value())
                .isCloseTo(90, within(1e-9));
        assertThat(ABYC.fuseLimitA(LABELS, Gauge.of("10"), ampacity).value()).isCloseTo(60, within(1e-9));
    }

    // Source: industry training sheet on voltage drop: 24 V, 4 A, 100 ft one way, 16 AWG of 4.99 Ohm per 1,000 ft:
    // printed 4.0 V, 16.7 %.
    @Test
    void agreesWithTheWorkedExampleOnVoltageDrop() {
        double ohmPerKm =
                NEC.resistanceOhmPerKm(LABELS, Gauge.of("16"), celsius(75)).value();
        VoltageDrop drop = drop(24, 30.48, 4, ohmPerKm);
        assertThat(drop.dropV().value()).isCloseTo(4.0, within(0.05));
        assertThat(drop.dropPercent().value()).isCloseTo(16.7, within(0.1));
    }

    // Source: chandlery table on lamps: 25 W at 12 V is 2.1 A, 18 m one way, 0.6 V: 2 L I / (56 E) = 2.25 mm2, printed
    // answer 2.5 mm2. That reckons with the nominal area; the largest resistance that IEC 60228 allows a flexible
    // conductor of 2.5 mm2 is 16 % more, and loses 0.603 V even at 20 C.
    @Test
    void allowsForTheClassFiveLimitThatTheLampExampleLeavesOut() {
        assertThat(2 * 18 * 2.1 / (56 * 0.6)).isCloseTo(2.25, within(0.005));
        assertThat(drop(12, 18, 2.1, 7.98).dropV().value()).isCloseTo(0.603, within(0.0005));
    }

    // Source: NFPA 70-2023, chapter 9 Table 8, note: R2 = R1 (1 + 0.00323 (T2 - 75)), the coefficient at 75 C.
    @ParameterizedTest
    @CsvSource({"20", "50", "90"})
    void resistanceFollowsTheCodesOwnTemperatureNote(double temperatureC) {
        double at75 = NEC.resistanceOhmPerKm(LABELS, Gauge.of("6"), celsius(75)).value();
        double expected = at75 * (1 + 0.00323 * (temperatureC - 75));
        assertThat(NEC.resistanceOhmPerKm(LABELS, Gauge.of("6"), celsius(temperatureC))
                        .value())
                .isCloseTo(expected, within(at75 * 1e-3));
    }

    // Source: NFPA 70-2023, Table 310.15(B)(1)(1): no factor for 60 C insulation above 55 C.
    @Test
    void nothingIsLeftWhereItIsTooHot() {
        assertThat(ampacityA(NEC, Gauge.of("10"), place(60, 56, 2, false)).value())
                .isZero();
        assertThat(ampacityA(ABYC, Gauge.of("10"), place(80, 80, 2, false)).value())
                .isZero();
    }

    @Test
    void insulationBetweenTwoClassesCountsAsTheLower() {
        Gauge six = Gauge.of("6");
        assertThat(ampacityA(ABYC, six, place(104.9, 30, 2, false)).value()).isEqualTo(100);
        assertThat(ampacityA(NEC, six, place(80, 30, 2, false)).value()).isEqualTo(65);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> ampacityA(NEC, six, place(59, 30, 2, false)))
                .withMessageContaining("60");
    }

    @Test
    void namesTheSetsThatThereAre() {
        assertThat(RuleSets.codes()).containsExactly("abyc-e11", "nec");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> RuleSets.of("abyc"))
                .withMessageContaining("abyc-e11, nec");
    }

    private static VoltageDrop drop(double voltageV, double oneWayM, double currentA, double ohmPerKm) {
        CircuitTask lamp = CircuitTask.of(
                "lamp",
                Optional.empty(),
                Derived.given("current", currentA, Unit.AMPERE, "/test"),
                Derived.given("length", oneWayM, Unit.METRE, "/test"),
                Derived.given("voltage", voltageV, Unit.VOLT, "/test"));
        return VoltageDrop.of(
                DutyReading.of(lamp),
                LABELS,
                Derived.given("resistance", ohmPerKm, Unit.OHM_PER_KM, "/test"),
                Derived.given("conductors", 1, Unit.COUNT, "/test"));
    }

    private static Derived ampacityA(RuleSet rules, Gauge gauge, Surroundings where) {
        return rules.ampacityA(LABELS, gauge, rules.derating(LABELS, where));
    }

    private static Surroundings place(double insulationC, double ambientC, int conductors, boolean engineSpace) {
        return new Surroundings(
                celsius(insulationC),
                celsius(ambientC),
                Derived.given("conductors", conductors, Unit.COUNT, "/bundledConductors"),
                engineSpace);
    }

    private static Derived celsius(double value) {
        return Derived.given("temperature", value, Unit.CELSIUS, "/test");
    }
}
