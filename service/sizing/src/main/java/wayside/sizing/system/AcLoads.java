package wayside.sizing.system;

import wayside.sizing.budget.EnergyBudget;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Expression;
import wayside.sizing.trace.Unit;

/** What the AC loads draw together, those that run at a hookup alone among them [W]. */
final class AcLoads {
    private static final Expression TOGETHER = Expression.definition("P = P_ac + P_only");

    private AcLoads() {}

    static Derived runningW(Site site) {
        EnergyBudget budget = site.journey().highestDemand().budget();
        return TOGETHER.value(
                "AC loads: power, all running",
                Unit.WATT,
                budget.demand().ac().peakPowerW().as("P_ac"),
                budget.demand().atAHookup().peakPowerW().as("P_only"));
    }
}
