package wayside.sizing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import wayside.sizing.brief.EnergyBrief;
import wayside.sizing.brief.InverterSpec;
import wayside.sizing.brief.Load;
import wayside.sizing.budget.EnergyBudget;

/** The energy budget against figures published or known in the trade. */
class EnergyBudgetCheckTest {
    // Source: trade article on sizing a module system for an off-grid application, small cabin load list;
    // printed: 1,130 Wh a day.
    @Test
    void agreesWithThePublishedCabinList() {
        EnergyBudget budget = EnergyBudgetSizer.size(EnergyBrief.of(
                                Load.dc("LED", 10, 5).times(4),
                                Load.dc("laptop", 60, 4),
                                Load.dc("router", 10, 24),
                                Load.dc("fridge", 50, 8),
                                Load.dc("pump", 100, 0.5))
                        .standby(0))
                .result();
        assertThat(budget.dailyTotalWh().value()).isCloseTo(1130, within(1e-9));
    }

    // Source: widely copied lecture "Design of PV System": lamp 18 W 4 h, fan 60 W 2 h, fridge 75 W 24 h at half duty;
    // printed: 1,092 Wh a day.
    @Test
    void agreesWithTheLectureExample() {
        EnergyBudget budget = EnergyBudgetSizer.size(EnergyBrief.of(
                                Load.dc("lamp", 18, 4),
                                Load.dc("fan", 60, 2),
                                Load.dc("fridge", 75, 24).withDuty(0.5))
                        .standby(0))
                .result();
        assertThat(budget.dailyTotalWh().value()).isCloseTo(1092, within(1e-9));
    }

    // Common practice, no source: output electronics of about 5.2 W left on all day cost about 125 Wh.
    @Test
    void outputsLeftOnAllDayCostAboutAHundredAndTwentyFiveWattHours() {
        EnergyBudget budget = EnergyBudgetSizer.size(
                        EnergyBrief.of(Load.dc("lamp", 1, 1)).standby(5.2))
                .result();
        assertThat(budget.standbyWh().value()).isCloseTo(125, within(0.5));
    }

    // Source: knowledge page of an inverter maker, idle loss: 40 W for 24 h are 960 Wh.
    @Test
    void anInverterLeftOnShows() {
        EnergyBudget budget = EnergyBudgetSizer.size(EnergyBrief.of(Load.ac("charger", 10, 1))
                        .standby(0)
                        .through(InverterSpec.OPEN.withIdle(40).withEfficiency(0.9)))
                .result();
        assertThat(budget.inverterLoss().orElseThrow().idleWh().value()).isCloseTo(960, within(1e-9));
    }

    // Common practice, no source: a 25 A outlet at 12 V carries 300 W.
    @Test
    void aTwentyFiveAmpereOutletCarriesThreeHundredWatts() {
        EnergyBudget budget = EnergyBudgetSizer.size(
                        EnergyBrief.of(Load.dc("everything", 300, 1)).standby(0).atVolts(12))
                .result();
        assertThat(budget.demand().dc().peakPowerW().value() / 12).isCloseTo(25, within(1e-9));
    }
}
