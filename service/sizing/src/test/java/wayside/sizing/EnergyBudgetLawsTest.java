package wayside.sizing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import wayside.sizing.brief.EnergyBrief;
import wayside.sizing.brief.InverterSpec;
import wayside.sizing.brief.Load;
import wayside.sizing.brief.RunningPower;
import wayside.sizing.budget.EnergyBudget;

/** Laws that hold for every load list. */
class EnergyBudgetLawsTest {
    @Property
    void sharesSumToTheWhole(@ForAll("loadLists") List<Load> loads) {
        EnergyBudget budget = budget(loads);
        assertThat(budget.loads().stream()
                        .mapToDouble(load -> load.share().value())
                        .sum())
                .isCloseTo(1, within(1e-9));
    }

    @Property
    void theHoursSumToTheDay(@ForAll("loadLists") List<Load> loads) {
        EnergyBudget budget = budget(loads);
        double total = budget.dailyTotalWh().value();
        assertThat(budget.hourlyW().stream().mapToDouble(Double::doubleValue).sum())
                .isCloseTo(total, within(1e-9 * total));
    }

    @Property
    void theOrderOfTheLoadsChangesNothing(@ForAll("loadLists") List<Load> loads) {
        List<Load> reversed = new ArrayList<>(loads);
        Collections.reverse(reversed);
        double total = budget(loads).dailyTotalWh().value();
        assertThat(budget(reversed).dailyTotalWh().value()).isCloseTo(total, within(1e-9 * total));
    }

    @Property
    void oneMoreLoadNeverTakesLess(@ForAll("loadLists") List<Load> loads, @ForAll("loads") Load extra) {
        // The inverter is fixed, so that a step to the next rating does not blur the comparison.
        InverterSpec inverter = Briefs.inverter(100_000);
        List<Load> more = new ArrayList<>(loads);
        more.add(extra);
        double before = budget(loads, inverter).dailyTotalWh().value();
        assertThat(budget(more, inverter).dailyTotalWh().value()).isGreaterThanOrEqualTo(before);
    }

    @Property
    void amperesAndWattsSayTheSame(@ForAll @DoubleRange(min = 0.1, max = 100) double amps) {
        Load inWatts = Load.dc("pump", amps * 12, 2);
        Load inAmps = inWatts.drawing(new RunningPower.Amps(amps, 12));
        assertThat(budget(List.of(inAmps)).dailyTotalWh().value())
                .isEqualTo(budget(List.of(inWatts)).dailyTotalWh().value());
    }

    @Property
    void everyFigureIsAStepOfTheDerivation(@ForAll("loadLists") List<Load> loads) {
        TracedValues.assertEachIsAStep(TracedValues.of(budget(loads)));
    }

    private static EnergyBudget budget(List<Load> loads) {
        return budget(loads, InverterSpec.OPEN);
    }

    private static EnergyBudget budget(List<Load> loads, InverterSpec inverter) {
        return EnergyBudgetSizer.size(EnergyBrief.of(loads.toArray(new Load[0])).through(inverter))
                .result();
    }

    @Provide
    Arbitrary<List<Load>> loadLists() {
        return loads().list().ofMinSize(1).ofMaxSize(12);
    }

    @Provide
    Arbitrary<Load> loads() {
        return Combinators.combine(
                        Arbitraries.doubles().between(0.5, 3000),
                        Arbitraries.doubles().between(0.01, 24),
                        Arbitraries.integers().between(1, 6),
                        Arbitraries.of(true, false))
                .as((power, hours, quantity, dc) ->
                        (dc ? Load.dc("load", power, hours) : Load.ac("load", power, hours)).times(quantity));
    }
}
