package wayside.sizing.system;

import java.util.ArrayList;
import java.util.List;
import wayside.sizing.budget.EnergyBudget;
import wayside.sizing.demand.LoadDemand;
import wayside.sizing.inverter.InverterLoss;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Formula;
import wayside.sizing.trace.Input;
import wayside.sizing.trace.Unit;

/** How hard the loads draw on the bank. */
final class BankDraw {
    private BankDraw() {}

    /** Power at which the average watt-hour leaves the bank, each load running alone [W]. */
    static Derived steadyW(EnergyBudget budget) {
        List<Input> inputs = new ArrayList<>();
        double weighted = 0;
        double energy = 0;
        for (LoadDemand load : budget.demand().loads()) {
            int number = inputs.size() / 2 + 1;
            inputs.add(load.dailyEnergyWh().as("E" + number));
            inputs.add(load.runningPowerW().as("P" + number));
            weighted += load.dailyEnergyWh().value() * load.runningPowerW().value();
            energy += load.dailyEnergyWh().value();
        }
        return Derived.computed(
                "power at which the average watt-hour leaves the bank",
                energy > 0 ? weighted / energy : 0,
                Unit.WATT,
                Formula.commonPractice("P = sum of E_i P_i / sum of E_i, each load running alone"),
                inputs.toArray(Input[]::new));
    }

    /** Everything running at once [W]. */
    static Derived peakW(EnergyBudget budget) {
        Derived dc = budget.demand().dc().peakPowerW();
        if (budget.inverterLoss().isEmpty()) {
            return dc;
        }
        InverterLoss loss = budget.inverterLoss().get();
        Derived ac = loss.batteryPowerW(budget.demand().ac().peakPowerW());
        return Derived.computed(
                "power out of the bank, everything running",
                dc.value() + ac.value(),
                Unit.WATT,
                Formula.definition("P = P_dc + P_in"),
                dc.as("P_dc"),
                ac.as("P_in"));
    }
}
