package wayside.sizing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import wayside.sizing.brief.At;
import wayside.sizing.brief.MonthWish;
import wayside.sizing.brief.PanelMount;
import wayside.sizing.brief.Place;
import wayside.sizing.brief.Sky;
import wayside.sizing.brief.SolarModule;
import wayside.sizing.brief.SolarYieldBrief;
import wayside.sizing.brief.StringWish;
import wayside.sizing.trace.Answer;
import wayside.sizing.trace.Caution;
import wayside.sizing.trace.Derivation;
import wayside.sizing.trace.Step;
import wayside.sizing.yield.SolarYield;
import wayside.sizing.yield.StringCheck;
import wayside.sizing.yield.YieldMonth;

/** The solar yield as a whole. */
class SolarYieldTest {
    private static final Place MINNEAPOLIS = Place.of(44.88, -93.23);
    // Invented: a common 36-cell module.
    private static final SolarModule MODULE = new SolarModule(22, 18, 6, OptionalDouble.of(-0.003));

    private static List<String> codes(Answer<?> answer) {
        return answer.cautions().stream().map(Caution::code).toList();
    }

    @Test
    void twelveMonthsWhenNoneIsAsked() {
        SolarYield yield =
                SolarYieldSizer.size(SolarYieldBrief.of(MINNEAPOLIS).rated(400)).result();
        assertThat(yield.months()).extracting(YieldMonth::month).containsExactly(1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12);
        for (YieldMonth month : yield.months()) {
            assertThat(month.lowWhPerDay().value())
                    .isLessThan(month.yieldWhPerDay().value());
            assertThat(month.highWhPerDay().value())
                    .isGreaterThan(month.yieldWhPerDay().value());
            assertThat(month.yieldWhPerDay().value())
                    .isCloseTo(400 * month.solar().yieldWhPerW().value(), within(1e-9));
        }
    }

    // Source: hourly NREL TMY3 2008 of Minneapolis by HDKR with a ground of 0.2: flat over 30 degrees .55 in December,
    // 1.02 in July. A steeper panel than 30 degrees does still better in December.
    @Test
    void aFlatRoofsLossIsTold() {
        Answer<SolarYield> answer = SolarYieldSizer.size(
                SolarYieldBrief.of(MINNEAPOLIS).mounted(PanelMount.FLAT).rated(400));
        YieldMonth december = answer.result().months().get(11);
        YieldMonth july = answer.result().months().get(6);
        assertThat(december.tilt().lossShare().value()).isBetween(0.40, 0.60);
        assertThat(december.tilt().bestTilt().value()).isBetween(60.0, 80.0);
        assertThat(july.tilt().lossShare().value()).isLessThan(0.04);
        assertThat(codes(answer)).contains("tilt", "snow");
    }

    // Source: common practice, no source: a flat 100 W panel in central Europe brings some 300 to 500 Wh on a June day
    // and 30 to 80 Wh in December.
    @Test
    void aHundredWattsBringWhatTheTradeExpects() {
        SolarYield yield =
                SolarYieldSizer.size(SolarYieldBrief.of(Place.of(48.1, 11.6))).result();
        assertThat(yield.solarPowerW().value()).isEqualTo(100);
        assertThat(yield.months().get(5).yieldWhPerDay().value()).isBetween(300.0, 500.0);
        assertThat(yield.months().get(11).yieldWhPerDay().value()).isBetween(30.0, 80.0);
    }

    @Test
    void polarNightIsToldAndBringsNothing() {
        Answer<SolarYield> answer =
                SolarYieldSizer.size(SolarYieldBrief.of(Place.of(78.2, 15.6)).in(MonthWish.of(12)));
        YieldMonth december = answer.result().months().get(0);
        assertThat(december.yieldWhPerDay().value()).isZero();
        assertThat(december.lowWhPerDay().value()).isZero();
        assertThat(december.sun().daylightHours().value()).isZero();
        assertThat(december.sun().noonAltitudeDegrees().value()).isNegative();
        assertThat(codes(answer)).contains("no-sun");
    }

    @Test
    void whatIsGivenIsUsedAndNotAssumed() {
        Answer<SolarYield> answer = SolarYieldSizer.size(SolarYieldBrief.of(MINNEAPOLIS)
                .in(new MonthWish(
                        At.ROOT.field("months").entry(0),
                        6,
                        Optional.of(new Sky.DailyIrradiation(6.5)),
                        Optional.empty())));
        assertThat(answer.result().months().get(0).solar().horizontalKwhM2().value())
                .isEqualTo(6.5);
        assertThat(answer.choices()).extracting(c -> c.field().orElseThrow()).containsExactly("/months/0/ambient");
    }

    // Source: NFPA 70-2020, 690.8(A)(1) and (B)(1): 1.25 and 1.5625 times the short-circuit current.
    @Test
    void stringsAreCheckedColdAndHot() {
        SolarYieldBrief brief = SolarYieldBrief.of(MINNEAPOLIS).rated(200);
        Answer<SolarYield> good = SolarYieldSizer.size(brief.wired(StringWish.of(MODULE)));
        StringCheck check = good.result().strings().orElseThrow();
        assertThat(check.fits()).isTrue();
        assertThat(check.maximumCurrentA().value()).isCloseTo(7.5, within(1e-12));
        assertThat(check.conductorCurrentA().value()).isCloseTo(9.375, within(1e-12));
        assertThat(codes(good)).contains("array-live").doesNotContain("string-over-voltage");

        StringWish five = new StringWish(
                MODULE, OptionalInt.of(5), OptionalInt.empty(), OptionalDouble.of(100), OptionalDouble.of(-30));
        Answer<SolarYield> bad = SolarYieldSizer.size(brief.wired(five));
        // 5 x 22 V x (1 + 0.003 x 55) = 128.15 V.
        assertThat(bad.result().strings().orElseThrow().coldOpenCircuitV().value())
                .isCloseTo(128.15, within(1e-9));
        assertThat(codes(bad).get(0)).isEqualTo("string-over-voltage");
    }

    @Test
    void aSingleModuleIsTooLittleForAHighBus() {
        StringWish one = new StringWish(
                MODULE, OptionalInt.of(1), OptionalInt.empty(), OptionalDouble.empty(), OptionalDouble.empty());
        SolarYieldBrief brief = SolarYieldBrief.of(MINNEAPOLIS).wired(one);
        SolarYieldBrief high = new SolarYieldBrief(
                brief.at(),
                brief.place(),
                brief.panel(),
                brief.solarPowerW(),
                brief.months(),
                OptionalDouble.of(24),
                brief.strings());
        assertThat(codes(SolarYieldSizer.size(high))).contains("string-under-voltage");
    }

    @Test
    void everyFigureIsDerivedAndEveryDefaultNamed() {
        StringWish strings = new StringWish(
                At.ROOT.field("strings"),
                MODULE,
                OptionalInt.empty(),
                OptionalInt.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty());
        Answer<SolarYield> answer = SolarYieldSizer.size(SolarYieldBrief.of(MINNEAPOLIS)
                .mounted(PanelMount.open(At.ROOT.field("panel")))
                .wired(strings));
        List<Step> steps = Derivation.of(TracedValues.of(answer.result())).steps();
        assertThat(steps).isNotEmpty().allSatisfy(step -> {
            assertThat(step.value().source().title()).isNotBlank();
            assertThat(step.value().value()).isFinite();
        });
        assertThat(TracedValues.assumptions(answer))
                .extracting(a -> a.field().orElse("a convention"))
                .contains(
                        "/panel/tiltDegrees",
                        "/panel/shadedShare",
                        "/solarPowerW",
                        "/months/0/sky",
                        "/months/11/ambient",
                        "/strings/coldestC",
                        "/strings/controllerMaximumVoltageV");
    }
}
