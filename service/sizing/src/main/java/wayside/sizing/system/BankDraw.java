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
public final class BankDraw {
    private static final Expression STEADY = Expression.commonPractice("P_mean = sum(E P) / sum(E)");
    private static final Expression NOTHING_RUNS = Expression.commonPractice("P_mean = sum(E P)");
    private static final Expression START = Expression.commonPractice("S = max(P + (S_dc - P_dc), P_dc + S_in)");
    private static final Expression EVERYTHING = Expression.definition("P = P_dc + P_in");

    private BankDraw() {}

    /** Power at which the average watt-hour leaves the bank, each load running alone [W]. */
    public static Derived steadyW(EnergyBudget budget) {
        List<Input> inputs = new ArrayList<>();
        double energy = 0;
        for (LoadDemand load : budget.demand().loads()) {
            if (!load.onlyAtAHookup()) {
                inputs.add(load.dailyEnergyWh().as("E"));
                inputs.add(load.runningPowerW().as("P"));
                energy += load.dailyEnergyWh().value();
            }
        }
        return (energy > 0 ? STEADY : NOTHING_RUNS)
                .value(
                        budget.demand().whose() + "power at which the average watt-hour leaves the bank",
                        Unit.WATT,
                        inputs);
    }

    /** Everything that may run together, the inverter giving no more than its rating [W]. */
    public static Derived peakW(EnergyBudget budget) {
        Derived dc = budget.dcFromTheBusW(budget.demand().dc().peakPowerW());
        if (budget.inverterLoss().isEmpty()) {
            return dc;
        }
        InverterLoss loss = budget.inverterLoss().get();
        Derived wanted = budget.demand().ac().peakPowerW();
        Derived most = budget.inverterRating().orElseThrow().continuousW();
        Derived ac = wanted.value() <= most.value()
                ? loss.batteryPowerW(wanted)
                : loss.fullBatteryPowerW(budget.inverterRating().orElseThrow());
        return EVERYTHING.value("power out of the bank, everything running", Unit.WATT, dc.as("P_dc"), ac.as("P_in"));
    }

    /** The hardest start while all else runs: of a DC load, or of an AC load through the inverter [W]. */
    public static Derived startW(EnergyBudget budget) {
        Derived dc = budget.dcFromTheBusW(budget.demand().dc().surgePowerW());
        Derived running = peakW(budget);
        if (budget.inverterLoss().isEmpty()) {
            return dc;
        }
        Derived dcRunning = budget.dcFromTheBusW(budget.demand().dc().peakPowerW());
        Derived wanted = budget.demand().ac().surgePowerW();
        Derived most = budget.inverterRating().orElseThrow().surgeW();
        Derived ac = budget.inverterLoss().get().startBatteryPowerW(wanted.value() <= most.value() ? wanted : most);
        return START.value(
                "power out of the bank, the hardest start",
                Unit.WATT,
                running.as("P"),
                dc.as("S_dc"),
                dcRunning.as("P_dc"),
                ac.as("S_in"));
    }
}
