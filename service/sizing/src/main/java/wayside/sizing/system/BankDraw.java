package wayside.sizing.system;

import java.util.ArrayList;
import java.util.List;
import wayside.sizing.budget.EnergyBudget;
import wayside.sizing.demand.LoadDemand;
import wayside.sizing.inverter.InverterLoss;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Expression;
import wayside.sizing.trace.Input;
import wayside.sizing.trace.Unit;

/** How hard the loads draw on the bank. */
final class BankDraw {
    private static final Expression STEADY = Expression.commonPractice("P_mean = sum(E P) / sum(E)");
    private static final Expression NOTHING_RUNS = Expression.commonPractice("P_mean = sum(E P)");
    private static final Expression EVERYTHING = Expression.definition("P = P_dc + P_in");

    private BankDraw() {}

    /** Power at which the average watt-hour leaves the bank, each load running alone [W]. */
    static Derived steadyW(EnergyBudget budget) {
        List<Input> inputs = new ArrayList<>();
        double energy = 0;
        for (LoadDemand load : budget.demand().loads()) {
            inputs.add(load.dailyEnergyWh().as("E"));
            inputs.add(load.runningPowerW().as("P"));
            energy += load.dailyEnergyWh().value();
        }
        return (energy > 0 ? STEADY : NOTHING_RUNS)
                .value(
                        budget.demand().whose() + "power at which the average watt-hour leaves the bank",
                        Unit.WATT,
                        inputs);
    }

    /** Everything running at once [W]. */
    static Derived peakW(EnergyBudget budget) {
        Derived dc = budget.demand().dc().peakPowerW();
        if (budget.inverterLoss().isEmpty()) {
            return dc;
        }
        InverterLoss loss = budget.inverterLoss().get();
        Derived ac = loss.batteryPowerW(budget.demand().ac().peakPowerW());
        return EVERYTHING.value("power out of the bank, everything running", Unit.WATT, dc.as("P_dc"), ac.as("P_in"));
    }
}
