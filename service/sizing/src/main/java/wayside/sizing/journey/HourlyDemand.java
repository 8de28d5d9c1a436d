package wayside.sizing.journey;

import java.util.List;
import java.util.function.Predicate;
import wayside.sizing.brief.Load;
import wayside.sizing.budget.EnergyBudget;
import wayside.sizing.demand.HourlyShares;
import wayside.sizing.demand.LoadDemand;
import wayside.sizing.ledger.DayUses;
import wayside.sizing.ledger.HourlyUses;
import wayside.sizing.ledger.LoadHours;
import wayside.sizing.trace.Unit;

/** A day's budget by the hour, what must not stop apart from what may. It adds up to the budget's own day. */
final class HourlyDemand {
    private HourlyDemand() {}

    static DayUses of(EnergyBudget budget) {
        boolean inverterMatters = budget.demand().loads().stream()
                .anyMatch(d -> d.isBehindTheInverter() && d.load().isEssential());
        return new DayUses(
                uses(budget, Load::isEssential, inverterMatters, true),
                uses(budget, load -> !load.isEssential(), !inverterMatters, false));
    }

    /** Conversion loss follows the AC loads; standing by is spread evenly. */
    private static HourlyUses uses(EnergyBudget budget, Predicate<Load> mine, boolean idle, boolean standby) {
        double[] loads = new double[Unit.HOURS_PER_DAY];
        double[] inverter = new double[Unit.HOURS_PER_DAY];
        double[] own = new double[Unit.HOURS_PER_DAY];
        double conversion = conversionShare(budget);
        double converter = converterShare(budget);
        for (LoadDemand demand : budget.demand().loads()) {
            if (mine.test(demand.load())) {
                double[] watts = wantedW(budget, demand);
                for (int hour = 0; hour < loads.length; hour++) {
                    loads[hour] += watts[hour];
                    inverter[hour] += watts[hour] * (demand.load().isAc() ? conversion : converter);
                }
            }
        }
        double idleW = idle ? budget.inverterLoss().map(l -> l.idleWh().value()).orElse(0.0) / loads.length : 0;
        for (int hour = 0; hour < loads.length; hour++) {
            inverter[hour] += idleW * budget.unplugged(hour);
            own[hour] = standby ? standbyWh(budget) / loads.length : 0;
        }
        return new HourlyUses(loads, inverter, own);
    }

    /** What each load wants at its plug, in the order of the load list. */
    static List<LoadHours> loads(EnergyBudget budget) {
        return budget.demand().loads().stream()
                .map(demand -> new LoadHours(demand.load().isEssential(), wantedW(budget, demand)))
                .toList();
    }

    private static double[] wantedW(EnergyBudget budget, LoadDemand demand) {
        double[] watts = HourlyShares.of(demand.load());
        for (int hour = 0; hour < watts.length; hour++) {
            watts[hour] = watts[hour]
                    * budget.left(demand, hour)
                    * demand.dailyEnergyWh().value();
        }
        return watts;
    }

    private static double standbyWh(EnergyBudget budget) {
        return budget.standbyWh().value()
                + budget.converter().map(c -> c.standbyWh().value()).orElse(0.0);
    }

    private static double converterShare(EnergyBudget budget) {
        double energy = budget.demand().dc().dailyEnergyWh().value();
        return energy > 0 ? budget.converter().map(c -> c.conversionWh()).orElse(0.0) / energy : 0;
    }

    private static double conversionShare(EnergyBudget budget) {
        double energy = budget.demand().ac().dailyEnergyWh().value();
        double loss = budget.inverterLoss().map(l -> l.conversionWh().value()).orElse(0.0);
        return energy > 0 ? loss / energy : 0;
    }
}
