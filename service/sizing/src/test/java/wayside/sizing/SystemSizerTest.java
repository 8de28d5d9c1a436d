package wayside.sizing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import wayside.sizing.brief.Ambient;
import wayside.sizing.brief.At;
import wayside.sizing.brief.BankPlacement;
import wayside.sizing.brief.Chemistry;
import wayside.sizing.brief.InverterSpec;
import wayside.sizing.brief.Load;
import wayside.sizing.brief.Place;
import wayside.sizing.brief.RunningPower;
import wayside.sizing.brief.Stay;
import wayside.sizing.brief.Surge;
import wayside.sizing.brief.SystemBrief;
import wayside.sizing.brief.SystemWishes;
import wayside.sizing.brief.Trip;
import wayside.sizing.recommendation.Recommendation;
import wayside.sizing.system.ArrayChoice;
import wayside.sizing.system.ArrayStrings;
import wayside.sizing.system.CatchUp;
import wayside.sizing.system.PowerUnit;
import wayside.sizing.system.SizedSystem;
import wayside.sizing.trace.Answer;
import wayside.sizing.trace.Caution;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Parameter;
import wayside.sizing.trace.Severity;
import wayside.sizing.trace.Shortfall;
import wayside.sizing.trace.Unit;
import wayside.sizing.wiring.SizedCircuit;

/** What the door says in the corners of the question. */
class SystemSizerTest {
    private static final Load FRIDGE = Load.dc("fridge", 50, 24).withDuty(0.33);

    private static Answer<Recommendation> lfp(InverterSpec inverter, Load... loads) {
        return SystemSizer.size(
                Briefs.brief(Briefs.wishes(Chemistry.LFP, 12, 0, 0, inverter), 2, Briefs.stay(5, 20), loads));
    }

    private static List<String> codes(Answer<Recommendation> answer) {
        return answer.cautions().stream().map(Caution::code).toList();
    }

    private static List<String> shortfalls(Answer<Recommendation> answer) {
        return answer.result().shortfalls().stream().map(Shortfall::code).toList();
    }

    @Test
    void recommendsNoInverterWithoutAlternatingLoads() {
        Answer<Recommendation> answer = lfp(InverterSpec.OPEN, FRIDGE);
        assertThat(answer.result().system().inverter()).isEmpty();
        assertThat(answer.result().system().circuits())
                .extracting(c -> c.duty().name())
                .doesNotContain("inverter");
        assertThat(codes(answer)).doesNotContain("mains");
    }

    @Test
    void everyFigureIsInTheDerivation() {
        Answer<Recommendation> answer = SystemSizer.size(RealList.in(7));
        SizedSystem system = answer.result().system();
        List<Derived> figures = TracedValues.of(answer.result());
        TracedValues.assertEachIsAStep(figures);
        assertThat(figures)
                .contains(
                        system.battery().bank().nominalEnergyWh(),
                        system.array().orElseThrow().controllers().ratedA(),
                        system.inverter().orElseThrow().batteryCurrentA(),
                        system.chargers().alternatorHoursToFull().orElseThrow());
    }

    @Test
    void theMainFuseBreaksTheShortCircuitOfALithiumBank() {
        SizedCircuit main =
                SystemSizer.size(RealList.in(7)).result().system().circuits().get(0);
        assertThat(main.duty().name()).isEqualTo("battery main");
        assertThat(main.duty().interruptA().value()).isGreaterThanOrEqualTo(20000);
        assertThat(((SizedCircuit.Wired) main).fuse().link().breakingA().value())
                .isGreaterThanOrEqualTo(20000);
    }

    @Test
    void theMainCableCarriesWhatComesInFromTheHookup() {
        SystemBrief brief = SystemBrief.of(Trip.of(Briefs.stay(5, 20).hookedUp(2)), FRIDGE);
        List<SizedCircuit> circuits = SystemSizer.size(brief).result().system().circuits();
        double main = circuits.get(0).duty().designCurrentA().value();
        assertThat(circuits)
                .filteredOn(c -> c.duty().name().equals("shore charger"))
                .singleElement()
                .satisfies(shore ->
                        assertThat(shore.duty().designCurrentA().value()).isLessThanOrEqualTo(main));
    }

    @Test
    void theArrayIsMadeOfWholeStrings() {
        ArrayChoice array = lfp(InverterSpec.OPEN, Load.dc("light", 5, 4))
                .result()
                .system()
                .array()
                .orElseThrow();
        ArrayStrings strings = array.strings();
        assertThat(array.powerW().value())
                .isEqualTo(strings.modulePowerW().value()
                        * strings.seriesCount().value()
                        * strings.parallelCount().value());
        assertThat(strings.coldOpenCircuitV().value())
                .isLessThanOrEqualTo(strings.controllerMaximumV().value());
    }

    @Test
    void polarNightWithoutOtherSourcesIsAShortfall() {
        SystemBrief brief = SystemBrief.of(Trip.of(Stay.of(Place.of(78, 15), 12, 7)), FRIDGE);
        Answer<Recommendation> answer = SystemSizer.size(brief);
        assertThat(shortfalls(answer)).containsExactly("no-sun");
        assertThat(answer.result().system().array()).isEmpty();
    }

    @Test
    void polarNightAtAHookupIsNone() {
        SystemBrief outside =
                SystemBrief.of(Trip.of(Stay.of(Place.of(78, 15), 12, 7).hookedUp(24)), FRIDGE);
        assertThat(shortfalls(SystemSizer.size(outside))).containsExactly("too-cold-to-charge");
        SystemBrief inTheCabin = new SystemBrief(
                outside.at(),
                outside.loads(),
                outside.trip(),
                outside.system().in(BankPlacement.warmerBy(30)),
                outside.target(),
                outside.sampling());
        Answer<Recommendation> answer = SystemSizer.size(inTheCabin);
        assertThat(answer.result().feasible()).isTrue();
        assertThat(answer.result().system().chargers().shore()).isPresent();
    }

    @Test
    void anInverterThatCannotStartTheLoadIsAShortfall() {
        InverterSpec small = Briefs.inverter(500, OptionalDouble.of(600));
        assertThat(shortfalls(lfp(small, Load.ac("freezer", 150, 8).withSurge(new Surge.Factor(5)))))
                .containsExactly("inverter-surge-too-small");
        assertThat(shortfalls(lfp(small, Load.ac("kettle", 1500, 0.1)))).containsExactly("inverter-too-small");
    }

    @Test
    void loadsThatFitOneByOneOnlyGetACaution() {
        InverterSpec given = Briefs.inverter(2000);
        Answer<Recommendation> answer = lfp(given, Load.ac("hob", 1800, 0.3), Load.ac("kettle", 1500, 0.1));
        assertThat(answer.result().feasible()).isTrue();
        assertThat(codes(answer)).contains("not-all-at-once");
    }

    @Test
    void tooMuchCurrentAtTwelveVoltsPointsToAHigherBus() {
        Answer<Recommendation> answer = lfp(InverterSpec.OPEN, Load.ac("oven", 9000, 1));
        assertThat(answer.result().feasible()).isFalse();
        assertThat(answer.result().shortfalls())
                .extracting(
                        shortfall -> shortfall.message().find("higherVoltage").orElse(null))
                .contains(Parameter.number("higherVoltage", 24, Unit.VOLT));
    }

    @Test
    void frostMakesColdChargingADanger() {
        SystemBrief brief = SystemBrief.of(
                Trip.of(Stay.of(Place.of(46, 8), 1, 7).at(new Ambient(-3, 8)).driving(2)), FRIDGE);
        assertThat(SystemSizer.size(brief).cautions())
                .filteredOn(caution -> caution.code().equals("cold-charging"))
                .extracting(Caution::severity)
                .containsExactly(Severity.DANGER);
    }

    @Test
    void aBankInAHeatedCabinMayBeChargedInFrostAndGivesMore() {
        SystemBrief outside = SystemBrief.of(
                Trip.of(Stay.of(Place.of(46, 8), 1, 7).at(new Ambient(-3, 8)).driving(2)), FRIDGE);
        SystemBrief inside = new SystemBrief(
                At.ROOT,
                outside.loads(),
                outside.trip(),
                SystemWishes.open(At.ROOT.field("system")).in(BankPlacement.warmerBy(18)),
                outside.target(),
                outside.sampling());
        SizedSystem cold = SystemSizer.size(outside).result().system();
        SizedSystem warm = SystemSizer.size(inside).result().system();
        assertThat(cold.chargeLockedOutInCold()).isTrue();
        assertThat(warm.chargeLockedOutInCold()).isFalse();
        assertThat(warm.battery().bank().coldUsableEnergyWh().value()
                        / warm.battery().bank().nominalEnergyWh().value())
                .isGreaterThan(cold.battery().bank().coldUsableEnergyWh().value()
                        / cold.battery().bank().nominalEnergyWh().value());
        assertThat(SystemSizer.size(inside).cautions())
                .filteredOn(caution -> caution.code().equals("cold-charging"))
                .extracting(Caution::severity)
                .containsExactly(Severity.WARNING);
    }

    // Common practice, no source: an energy balance. 480 Wh a day, two thirds of them through a bank of 0.94 to 0.97 in
    // and out,
    // take about 500 Wh in; what an array brings above that fills 900 usable Wh.
    @Test
    void dullDaysAreMadeUpByWhatTheArrayBringsAboveTheDay() {
        SizedSystem large = withArray(400);
        double broughtWh = large.array().orElseThrow().yieldsWh().get(0).value();
        assertThat(broughtWh).isGreaterThan(900);
        assertThat(large.catchUps().get(0).days().orElseThrow().value())
                .isCloseTo(900 / (broughtWh - 500), withinPercentage(10));
        assertThat(withArray(800).catchUps().get(0).days().orElseThrow().value())
                .isLessThan(large.catchUps().get(0).days().orElseThrow().value() / 2);
        CatchUp small = withArray(100).catchUps().get(0);
        assertThat(small.days()).isEmpty();
        assertThat(small.overWh().value()).isNegative();
    }

    private static SizedSystem withArray(double solarW) {
        SystemWishes wishes = Briefs.wishes(Chemistry.LFP, 12, 1000, solarW, InverterSpec.OPEN);
        return SystemSizer.size(Briefs.brief(wishes, 1, Briefs.stay(4, 20), Load.dc("all", 20, 24)))
                .result()
                .system();
    }

    @Test
    void leadAcidIsVented() {
        Answer<Recommendation> answer = SystemSizer.size(Briefs.brief(
                Briefs.wishes(Chemistry.FLOODED, 12, 0, 0, InverterSpec.OPEN), 2, Briefs.stay(5, 20), FRIDGE));
        assertThat(codes(answer)).contains("lead-acid-ventilation").doesNotContain("cold-charging");
        assertThat(answer.result().system().ventilationCm2()).isPresent();
    }

    @Test
    void usualMixUpsAreNamed() {
        Load byAmps = Load.dc("pump", 1, 1).drawing(new RunningPower.Amps(2, 120));
        Answer<Recommendation> answer = lfp(
                InverterSpec.OPEN,
                Load.dc("fridge", 60, 24),
                Load.ac("microwave", 800, 0.2),
                Load.dc("CPAP", 30, 8),
                byAmps);
        assertThat(codes(answer))
                .contains("label-around-the-clock", "cooking-watts", "must-not-fail", "units-mixed-up");
        assertThat(codes(lfp(InverterSpec.OPEN, FRIDGE, Load.ac("microwave", 1200, 0.2))))
                .doesNotContain("label-around-the-clock", "cooking-watts", "must-not-fail", "units-mixed-up");
    }

    @Test
    void aSmallListFitsOneUnitAndALargeOneDoesNot() {
        assertThat(lfp(InverterSpec.OPEN, FRIDGE).result().system().powerUnit().fits())
                .isTrue();
        PowerUnit large = lfp(InverterSpec.OPEN, Load.dc("winch", 400, 0.1), FRIDGE)
                .result()
                .system()
                .powerUnit();
        assertThat(large.fits()).isFalse();
        assertThat(large.reasons().get(0).find("current")).hasValue(Parameter.number("current", 25, Unit.AMPERE));
    }

    @Test
    void theDesignMonthIsTheOneWithTheHighestLoadByYield() {
        SystemBrief brief = SystemBrief.of(Trip.of(Briefs.stay(6, 20), Briefs.stay(2, 20), Briefs.stay(4, 20)), FRIDGE);
        assertThat(SystemSizer.size(brief)
                        .result()
                        .system()
                        .arrayNeed()
                        .worst()
                        .stay()
                        .index())
                .isEqualTo(1);
    }

    @Test
    void anArrayBeyondTheRoofIsSaidOutLoud() {
        SystemBrief brief = SystemBrief.of(Trip.of(Stay.of(Place.of(52, 0), 12, 7)), RealList.loads());
        Answer<Recommendation> answer = SystemSizer.size(brief);
        assertThat(shortfalls(answer)).contains("roof-too-small");
        assertThat(answer.result().system().array().orElseThrow().areaM2().value())
                .isLessThanOrEqualTo(6);
    }
}
