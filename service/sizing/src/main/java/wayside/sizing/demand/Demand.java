package wayside.sizing.demand;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import wayside.sizing.brief.Load;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Expression;
import wayside.sizing.trace.Input;
import wayside.sizing.trace.Unit;

/**
 * The load list in figures, at the loads' own plugs.
 *
 * @param whose opens the labels of what another stay of the same trip has otherwise: {@code stay 2: }; else empty
 * @param loads in the order of the list
 * @param dc all direct-current loads
 * @param ac all loads behind the inverter
 * @param atAHookup all loads that run nowhere but straight off a hookup
 */
public record Demand(String whose, List<LoadDemand> loads, SupplyDemand dc, SupplyDemand ac, SupplyDemand atAHookup) {
    private static final Expression ENERGY = Expression.definition("E_all = sum(E)");
    private static final Expression POWER = Expression.definition("P_all = sum(P)");
    private static final Expression SURGE = Expression.commonPractice("S = P + max(Ps)");
    private static final Expression SURGE_OF_NOTHING = Expression.commonPractice("S = P");

    public Demand {
        loads = List.copyOf(loads);
    }

    /** Where there is one temperature only. */
    public static Demand of(List<Load> loads, Derived ambientC) {
        return of(loads, ambientC, "");
    }

    /**
     * @param loads at least one
     * @param ambientC air temperature [C]
     * @param stay opens the labels of what the temperature decides
     */
    public static Demand of(List<Load> loads, Derived ambientC, String stay) {
        return of(loads, ambientC, stay, Set.of());
    }

    /**
     * @param loads at least one
     * @param ambientC air temperature [C]
     * @param stay opens the labels of what the temperature decides
     * @param atAHookup those that run nowhere else
     */
    public static Demand of(List<Load> loads, Derived ambientC, String stay, Set<Load> atAHookup) {
        String whose = loads.stream().allMatch(load -> load.ambientDuty().isEmpty()) ? "" : stay;
        List<LoadDemand> demands = new ArrayList<>();
        for (Load load : loads) {
            demands.add(LoadEnergy.of(load, ambientC, whose, atAHookup.contains(load)));
        }
        return new Demand(
                whose,
                demands,
                total(whose, "DC loads: ", demands, load -> !load.load().isAc()),
                total(whose, "AC loads: ", demands, LoadDemand::isBehindTheInverter),
                total(whose, "AC loads at a hookup alone: ", demands, LoadDemand::onlyAtAHookup));
    }

    /** Whether any load is behind the inverter. */
    public boolean hasAc() {
        return loads.stream().anyMatch(LoadDemand::isBehindTheInverter);
    }

    private static SupplyDemand total(String whose, String name, List<LoadDemand> all, Predicate<LoadDemand> some) {
        List<LoadDemand> demands = all.stream().filter(some).toList();
        Derived energy = ENERGY.value(
                whose + name + "daily energy", Unit.WATT_HOUR, list("E", demands, LoadDemand::dailyEnergyWh));
        Derived peak =
                POWER.value(name + "power, all running", Unit.WATT, list("P", demands, LoadDemand::runningPowerW));
        return new SupplyDemand(energy, peak, surge(name, demands, peak));
    }

    private static Derived surge(String name, List<LoadDemand> demands, Derived peak) {
        List<Input> inputs = list("Ps", demands, LoadDemand::extraSurgeW);
        inputs.add(0, peak.as("P"));
        return (demands.isEmpty() ? SURGE_OF_NOTHING : SURGE)
                .value(name + "surge, all running and the hardest start", Unit.WATT, inputs);
    }

    private static List<Input> list(String symbol, List<LoadDemand> demands, Function<LoadDemand, Derived> part) {
        List<Input> inputs = new ArrayList<>();
        demands.forEach(demand -> inputs.add(part.apply(demand).as(symbol)));
        return inputs;
    }
}
