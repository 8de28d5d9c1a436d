package wayside.sizing.demand;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import wayside.sizing.brief.Load;
import wayside.sizing.brief.Supply;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Formula;
import wayside.sizing.trace.Input;
import wayside.sizing.trace.Unit;

/**
 * The load list in figures, at the loads' own plugs.
 *
 * @param loads in the order of the list
 * @param dc all direct-current loads
 * @param ac all loads behind the inverter
 */
public record Demand(List<LoadDemand> loads, SupplyDemand dc, SupplyDemand ac) {
    public Demand {
        loads = List.copyOf(loads);
    }

    /**
     * @param loads at least one
     * @param ambientC air temperature [C]
     */
    public static Demand of(List<Load> loads, Derived ambientC) {
        List<LoadDemand> demands = new ArrayList<>();
        for (Load load : loads) {
            demands.add(LoadEnergy.of(load, ambientC));
        }
        return new Demand(demands, total(demands, Supply.DC), total(demands, Supply.AC));
    }

    public boolean hasAc() {
        return loads.stream().anyMatch(demand -> demand.load().isAc());
    }

    private static SupplyDemand total(List<LoadDemand> all, Supply supply) {
        String name = supply.name() + " loads: ";
        List<LoadDemand> demands =
                all.stream().filter(d -> d.load().isAc() == (supply == Supply.AC)).toList();
        Derived energy = sum(name + "daily energy", Unit.WATT_HOUR, "E", demands, LoadDemand::dailyEnergyWh);
        Derived peak = sum(name + "power, all running", Unit.WATT, "P", demands, LoadDemand::runningPowerW);
        return new SupplyDemand(energy, peak, surge(name, demands, peak));
    }

    private static Derived sum(
            String label, Unit unit, String symbol, List<LoadDemand> demands, Function<LoadDemand, Derived> part) {
        List<Input> inputs = new ArrayList<>();
        double sum = 0;
        for (LoadDemand demand : demands) {
            Derived value = part.apply(demand);
            inputs.add(value.as(symbol + (inputs.size() + 1)));
            sum += value.value();
        }
        return Derived.computed(
                label,
                sum,
                unit,
                Formula.definition(symbol + " = sum of all " + symbol.toLowerCase(Locale.ROOT)),
                inputs.toArray(Input[]::new));
    }

    private static Derived surge(String name, List<LoadDemand> demands, Derived peak) {
        List<Input> inputs = new ArrayList<>(List.of(peak.as("P")));
        double largest = 0;
        for (LoadDemand demand : demands) {
            if (demand.extraSurgeW().value() > 0) {
                inputs.add(demand.extraSurgeW().as("Ps" + inputs.size()));
                largest = Math.max(largest, demand.extraSurgeW().value());
            }
        }
        return Derived.computed(
                name + "surge, all running and the hardest start",
                peak.value() + largest,
                Unit.WATT,
                Formula.commonPractice("S = P + largest Ps"),
                inputs.toArray(Input[]::new));
    }
}
