package wayside.sizing.budget;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wayside.sizing.brief.At;
import wayside.sizing.brief.DutyPoint;
import wayside.sizing.brief.EnergyBrief;
import wayside.sizing.brief.InverterSpec;
import wayside.sizing.brief.Load;
import wayside.sizing.brief.RunningPower;
import wayside.sizing.brief.Supply;
import wayside.sizing.brief.Surge;
import wayside.sizing.brief.Tier;
import wayside.sizing.brief.Window;
import wayside.sizing.reference.ReferenceTable;
import wayside.sizing.reference.ReferenceTables;
import wayside.sizing.trace.Caution;

// All of these rules are common practice, no source.
class LoadSuspicionsTest {
    private static final Load AROUND_THE_CLOCK = Load.dc("Fridge", 45, 24);

    private static List<Caution> cautions(EnergyBrief brief) {
        return EnergyBudget.of(brief).cautions().stream()
                .filter(caution -> !caution.code().equals("inverter-idle"))
                .toList();
    }

    private static List<Caution> cautions(Load... loads) {
        return cautions(EnergyBrief.of(loads));
    }

    private static Load amps(String name, Supply supply, double currentA, double voltageV) {
        return Load.dc(name, 1, 1).suppliedBy(supply).drawing(new RunningPower.Amps(currentA, voltageV));
    }

    private static InverterSpec inverter(double continuousW) {
        OptionalDouble open = OptionalDouble.empty();
        return new InverterSpec(At.ROOT.field("inverter"), OptionalDouble.of(continuousW), open, open, open, open);
    }

    @Test
    void eachCautionSaysWhichFieldItIsAbout() {
        assertThat(cautions(
                        Load.dc("Lamp", 5, 4),
                        AROUND_THE_CLOCK,
                        Load.ac("Microwave", 800, 0.2),
                        Load.dc("Kettle", 1500, 0.1),
                        Load.dc("Battery", 10_000, 1),
                        amps("Pump", Supply.DC, 2, 120),
                        Load.ac("Freezer", 90, 8),
                        Load.dc("CPAP", 30, 8),
                        Load.dc("Nebulizer", 30, 1).of(Tier.COMFORT)))
                .extracting(Caution::code, caution -> caution.field().orElseThrow())
                .containsExactly(
                        tuple("label-around-the-clock", "/loads/1/dutyCycle"),
                        tuple("cooking-watts", "/loads/2/powerW"),
                        tuple("large-load-at-dc", "/loads/3/supply"),
                        tuple("units-mixed-up", "/loads/4/powerW"),
                        tuple("units-mixed-up", "/loads/5/voltageV"),
                        tuple("start-surge-missing", "/loads/6/surgeFactor"),
                        tuple("must-not-fail", "/loads/7"),
                        tuple("humidifier", "/loads/7"),
                        tuple("must-not-fail", "/loads/8"),
                        tuple("must-not-be-shed", "/loads/8/tier"));
    }

    @Test
    void whatIsListedAsVitalMustNotFailWhateverItIsCalled() {
        assertThat(cautions(Load.dc("the grey box", 30, 8).of(Tier.VITAL)))
                .extracting(Caution::code)
                .containsExactly("must-not-fail");
        assertThat(cautions(Load.dc("the grey box", 30, 8))).isEmpty();
    }

    @Test
    void oneCautionForEachLoadAndRule() {
        assertThat(cautions(AROUND_THE_CLOCK, Load.dc("Freezer", 60, 24)))
                .extracting(Caution::code, caution -> caution.field().orElseThrow())
                .containsExactly(
                        tuple("label-around-the-clock", "/loads/0/dutyCycle"),
                        tuple("label-around-the-clock", "/loads/1/dutyCycle"));
    }

    @ParameterizedTest
    @CsvSource({
        "Kühlschrank fridge, 24, true",
        "Cool box, 13, true",
        "coolbox, 12, false",
        "thermoelectric cooler, 24, false",
        "fridge on gas: control board, 24, false",
        "furnace fan, 24, true",
        "furnace fan, 13, false",
        "router, 24, false"
    })
    void whatRestsIsNotListedForTheWholeDay(String name, double hours, boolean suspicious) {
        assertThat(cautions(Load.dc(name, 40, hours)).stream()
                        .anyMatch(caution -> caution.code().equals("label-around-the-clock")))
                .isEqualTo(suspicious);
    }

    @Test
    void aDutyCycleACurveOrAFewWattsAnswerIt() {
        assertThat(cautions(AROUND_THE_CLOCK.withDuty(0.4))).isEmpty();
        assertThat(cautions(AROUND_THE_CLOCK.withAmbientDuty(new DutyPoint(25, 0.4))))
                .isEmpty();
        assertThat(cautions(Load.dc("Fridge, its mean", 15, 24))).isEmpty();
    }

    @Test
    void aWindowOfTheWholeDayCountsAsItsHours() {
        Load byWindow = new Load(
                At.ROOT,
                "Fridge",
                Optional.empty(),
                OptionalInt.empty(),
                new RunningPower.Watts(45),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                List.of(new Window(0, Window.MINUTES_PER_DAY)),
                Optional.empty(),
                Optional.empty(),
                List.of());
        assertThat(cautions(byWindow)).extracting(Caution::code).containsExactly("label-around-the-clock");
    }

    @Test
    void theSameWattsAreNoGreatCurrentOnAHigherBus() {
        EnergyBrief brief = EnergyBrief.of(Load.dc("Roof cooler fan", 700, 2));
        assertThat(cautions(brief)).extracting(Caution::code).containsExactly("large-load-at-dc");
        assertThat(cautions(brief.atVolts(24))).isEmpty();
    }

    @Test
    void namesEachLoadThatTheInverterCannotRunOrStart() {
        EnergyBrief brief = EnergyBrief.of(
                        Load.ac("Kettle", 1500, 0.1),
                        Load.ac("Pump", 300, 0.1).withSurge(new Surge.Factor(8)),
                        amps("Iron", Supply.AC, 10, 120),
                        Load.ac("Laptop", 60, 3))
                .through(inverter(1000));
        assertThat(cautions(brief))
                .extracting(Caution::code, caution -> caution.field().orElseThrow())
                .containsExactly(
                        tuple("inverter-too-small", "/loads/0/powerW"),
                        tuple("inverter-surge-too-small", "/loads/1/surgeFactor"),
                        tuple("inverter-too-small", "/loads/2/currentA"),
                        tuple("not-all-at-once", "/inverter/continuousW"));
    }

    @Test
    void twoOfAKindTogetherAreMoreThanOne() {
        EnergyBrief brief = EnergyBrief.of(Load.ac("Iron", 600, 0.1).times(2)).through(inverter(1000));
        assertThat(cautions(brief)).extracting(Caution::code).containsExactly("not-all-at-once");
    }

    @Test
    void anInverterThatIsChosenForItsLoadsIsNeverTooSmall() {
        assertThat(cautions(
                        Load.ac("Kettle", 1500, 0.1), Load.ac("Freezer", 150, 8).withSurge(new Surge.Factor(7))))
                .isEmpty();
    }

    // The starter list gives what things draw and how they run: nothing in it is a mix-up.
    @Test
    void theStarterListIsFreeOfMixUps() {
        ReferenceTable table = ReferenceTables.table("practice/appliances");
        Load[] loads = table.rows().stream().map(LoadSuspicionsTest::load).toArray(Load[]::new);
        assertThat(cautions(loads))
                .extracting(Caution::code, caution -> loads[index(caution)].name())
                .containsExactly(
                        tuple("must-not-fail", "CPAP without humidifier"),
                        tuple("humidifier", "CPAP without humidifier"),
                        tuple("must-not-fail", "CPAP with humidifier"),
                        tuple("humidifier", "CPAP with humidifier"));
    }

    private static int index(Caution caution) {
        return Integer.parseInt(caution.field().orElseThrow().split("/", -1)[2]);
    }

    private static Load load(ReferenceTable.Row row) {
        boolean curve = !row.text("ambientDuty").isEmpty();
        double surge = row.number("surgeFactor");
        return new Load(
                At.ROOT,
                row.key(),
                Optional.of(row.text("supply").equals("ac") ? Supply.AC : Supply.DC),
                OptionalInt.of((int) row.number("quantity")),
                new RunningPower.Watts(row.number("powerW")),
                OptionalDouble.of(row.number("hoursPerDay")),
                curve ? OptionalDouble.empty() : row.findNumber("dutyCycle"),
                List.of(),
                surge > 1 ? Optional.of(new Surge.Factor(surge)) : Optional.empty(),
                Optional.of(Tier.valueOf(row.text("tier").toUpperCase(Locale.ROOT))),
                curve ? List.of(new DutyPoint(25, 0.33)) : List.of());
    }
}
