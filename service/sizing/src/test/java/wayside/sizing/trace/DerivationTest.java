package wayside.sizing.trace;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;

class DerivationTest {
    private final Derived power = Derived.given("lamp: power", 5, Unit.WATT, "/loads/0/powerW");
    private final Derived hours =
            Derived.byDefault("lamp: hours", 4, Unit.HOUR, "/loads/0/hoursPerDay", "Evenings", Source.commonPractice());
    private final Derived energy = Derived.computed(
            "lamp: energy", 20, Unit.WATT_HOUR, Formula.definition("E = P h"), power.as("P"), hours.as("h"));

    @Test
    void everyStepComesAfterTheStepsItUses() {
        List<Step> steps = Derivation.of(List.of(energy)).steps();
        assertThat(steps).extracting(Step::id).containsExactly("lamp-power", "lamp-hours", "lamp-energy");
        assertThat(steps.get(2).inputs()).extracting(Step.StepInput::from).containsExactly("lamp-power", "lamp-hours");
    }

    @Test
    void aSharedValueIsOneStep() {
        Derived twice = Derived.computed(
                "two lamps", 40, Unit.WATT_HOUR, Formula.definition("E + E"), energy.as("E"), energy.as("E"));
        assertThat(Derivation.of(List.of(twice, energy)).steps()).hasSize(4);
    }

    @Test
    void aTableRowReadTwiceIsOneStep() {
        Derived first = row();
        Derived second = row();
        Derived sum = Derived.computed("sum", 12, Unit.OHM, Formula.definition("R + R"), first.as("R"), second.as("R"));
        Derivation derivation = Derivation.of(List.of(sum));
        assertThat(derivation.steps()).extracting(Step::id).containsExactly("resistance", "sum");
        assertThat(derivation.findStepId(second)).contains("resistance");
    }

    private static Derived row() {
        return Derived.lookedUp("resistance", 6, Unit.OHM, "folder/table", "row", Source.commonPractice());
    }

    @Test
    void aSumMadeTwiceFromTheSameIsOneStep() {
        Derived again = Derived.computed(
                "lamp: energy", 20, Unit.WATT_HOUR, Formula.definition("E = P h"), power.as("P"), hours.as("h"));
        Derivation derivation = Derivation.of(List.of(energy, again));
        assertThat(derivation.steps()).hasSize(3);
        assertThat(derivation.findStepId(again)).contains("lamp-energy");
    }

    @Test
    void whatDiffersInOneThingStaysASecondStep() {
        Derived otherHours = Derived.given("lamp: hours", 4, Unit.HOUR, "/loads/0/hoursPerDay");
        Derived sameResult = Derived.computed(
                "lamp: energy", 20, Unit.WATT_HOUR, Formula.definition("E = P h"), power.as("P"), otherHours.as("h"));
        assertThat(Derivation.of(List.of(energy, sameResult)).steps())
                .extracting(Step::id)
                .containsExactly("lamp-power", "lamp-hours", "lamp-energy", "lamp-hours-2", "lamp-energy-2");
    }

    @Test
    void twoDefaultsOfOneValueAreTwoAssumptions() {
        Derived second = Derived.byDefault(
                "lamp: hours", 4, Unit.HOUR, "/loads/1/hoursPerDay", "Evenings", Source.commonPractice());
        assertThat(Derivation.of(List.of(hours, second)).assumptions())
                .extracting(Assumption::field)
                .containsExactly("/loads/0/hoursPerDay", "/loads/1/hoursPerDay");
    }

    @Test
    void sameLabelsGetDifferentIds() {
        Derived other = Derived.given("lamp: power", 7, Unit.WATT, "/loads/1/powerW");
        Derived named = Derived.given("lamp: power 2", 9, Unit.WATT, "/loads/2/powerW");
        assertThat(Derivation.of(List.of(named, power, other)).steps())
                .extracting(Step::id)
                .doesNotHaveDuplicates()
                .startsWith("lamp-power-2", "lamp-power");
        assertThat(Derivation.of(List.of(power, other, named)).steps())
                .extracting(Step::id)
                .containsExactly("lamp-power", "lamp-power-2", "lamp-power-2-2");
    }

    @Test
    void everyDefaultBecomesAnAssumptionOnce() {
        Derivation derivation = Derivation.of(List.of(energy, hours));
        assertThat(derivation.assumptions()).singleElement().satisfies(assumption -> {
            assertThat(assumption.field()).isEqualTo("/loads/0/hoursPerDay");
            assertThat(assumption.value()).isEqualTo("4");
            assertThat(assumption.unit()).contains(Unit.HOUR);
        });
    }

    @Test
    void findsTheStepOfAValue() {
        Derivation derivation = Derivation.of(List.of(energy));
        assertThat(derivation.findStepId(energy)).contains("lamp-energy");
        assertThat(derivation.findStepId(Derived.given("other", 1, Unit.WATT, "/x")))
                .isEmpty();
    }

    @Test
    void refusesWhatIsNotANumber() {
        assertThatThrownBy(() -> Quantity.of(Double.NaN, Unit.WATT)).isInstanceOf(IllegalArgumentException.class);
    }
}
