package wayside.sizing.trace;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatNullPointerException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;

class DerivationTest {
    private static final Expression DAILY = Expression.definition("E = P h");

    private final Derived power = Derived.given("lamp: power", 5, Unit.WATT, "/loads/0/powerW");
    private final Derived hours =
            Derived.byDefault("lamp: hours", 4, Unit.HOUR, "/loads/0/hoursPerDay", "Evenings", Source.commonPractice());
    private final Derived energy = DAILY.value("lamp: energy", Unit.WATT_HOUR, power.as("P"), hours.as("h"));

    @Test
    void everyStepComesAfterTheStepsItUses() {
        List<Step> steps = Derivation.of(List.of(energy)).steps();
        assertThat(steps).extracting(Step::id).containsExactly("lamp-power", "lamp-hours", "lamp-energy");
        assertThat(steps.get(2).inputs()).extracting(Step.StepInput::from).containsExactly("lamp-power", "lamp-hours");
    }

    @Test
    void aSharedValueIsOneStep() {
        Derived twice =
                Expression.definition("T = sum(E)").value("two lamps", Unit.WATT_HOUR, energy.as("E"), energy.as("E"));
        assertThat(Derivation.of(List.of(twice, energy)).steps()).hasSize(4);
    }

    @Test
    void aTableRowReadTwiceIsOneStep() {
        Derived first = row();
        Derived second = row();
        Derived sum = Expression.definition("S = sum(R)").value("sum", Unit.OHM, first.as("R"), second.as("R"));
        Derivation derivation = Derivation.of(List.of(sum));
        assertThat(derivation.steps()).extracting(Step::id).containsExactly("resistance", "sum");
        assertThat(derivation.stepId(second)).isEqualTo("resistance");
    }

    private static Derived row() {
        return Derived.lookedUp("resistance", 6, Unit.OHM, "folder/table", "row", Source.commonPractice());
    }

    @Test
    void aSumMadeTwiceFromTheSameIsOneStep() {
        Derived again = DAILY.value("lamp: energy", Unit.WATT_HOUR, power.as("P"), hours.as("h"));
        Derivation derivation = Derivation.of(List.of(energy, again));
        assertThat(derivation.steps()).hasSize(3);
        assertThat(derivation.stepId(again)).isEqualTo("lamp-energy");
    }

    @Test
    void whatDiffersInOneThingStaysASecondStep() {
        Derived otherHours = Derived.given("lamp: hours", 4, Unit.HOUR, "/loads/0/hoursPerDay");
        Derived sameResult = DAILY.value("lamp: energy", Unit.WATT_HOUR, power.as("P"), otherHours.as("h"));
        assertThat(Derivation.of(List.of(energy, sameResult)).steps())
                .extracting(Step::id)
                .containsExactly("lamp-power", "lamp-hours", "lamp-energy", "lamp-hours-2", "lamp-energy-2");
    }

    @Test
    void twoDefaultsOfOneValueAreTwoAssumptions() {
        Derived second = Derived.byDefault(
                "lamp: hours", 4, Unit.HOUR, "/loads/1/hoursPerDay", "Evenings", Source.commonPractice());
        assertThat(Derivation.of(List.of(hours, second)).assumptions())
                .extracting(assumption -> assumption.field().orElseThrow())
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
            assertThat(assumption.field()).contains("/loads/0/hoursPerDay");
            assertThat(assumption.value()).isEqualTo("4");
            assertThat(assumption.quantity()).contains(Quantity.of(4, Unit.HOUR));
        });
    }

    @Test
    void findsTheStepOfAValue() {
        Derivation derivation = Derivation.of(List.of(energy));
        assertThat(derivation.stepId(energy)).isEqualTo("lamp-energy");
        Derived other = Derived.given("other", 1, Unit.WATT, "/x");
        assertThatNullPointerException().isThrownBy(() -> derivation.stepId(other));
    }

    @Test
    void refusesWhatIsNotANumber() {
        assertThatThrownBy(() -> Quantity.of(Double.NaN, Unit.WATT)).isInstanceOf(IllegalArgumentException.class);
    }
}
