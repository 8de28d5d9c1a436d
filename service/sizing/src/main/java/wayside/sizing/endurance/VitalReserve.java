package wayside.sizing.endurance;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wayside.sizing.brief.Load;
import wayside.sizing.brief.Tier;
import wayside.sizing.demand.LoadDemand;
import wayside.sizing.journey.Journey;
import wayside.sizing.ledger.Outcome;
import wayside.sizing.storage.ChemistryData;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Expression;
import wayside.sizing.trace.Input;
import wayside.sizing.trace.Unit;

/** How long loads that a life hangs on would go on alone at the lowest that the bank ever was. */
public final class VitalReserve {
    private static final Expression TAKEN = Expression.definition("E_vital = sum(E)");
    private static final Expression HOURS =
            Expression.definition("t = 24 E a eta_d max(0, f_use - d) / max(0.001, E_vital)");

    private VitalReserve() {}

    /**
     * Hours of it; none where no load is vital.
     *
     * @param nominalWh rated energy of the bank [Wh]
     * @param ageShare what age has left of it
     */
    public static Optional<Derived> find(
            Journey journey,
            Outcome outcome,
            ChemistryData data,
            Derived nominalWh,
            Derived ageShare,
            SimulatedFigures figures) {
        List<Input> vital = new ArrayList<>();
        for (LoadDemand demand : journey.highestDemand().budget().demand().loads()) {
            if (isVital(demand.load())) {
                vital.add(demand.dailyEnergyWh().as("E"));
            }
        }
        if (vital.isEmpty()) {
            return Optional.empty();
        }
        Derived deepest = figures.step(
                "deepest discharge of any run",
                outcome.deepestShare(),
                Unit.SHARE,
                "1 less the lowest state of charge of the N runs");
        return Optional.of(HOURS.value(
                "vital loads: reserve at the lowest of all runs",
                Unit.HOUR,
                nominalWh.as("E"),
                ageShare.as("a"),
                data.dischargeEfficiency().as("eta_d"),
                data.usableShare().as("f_use"),
                deepest.as("d"),
                TAKEN.value("vital loads: energy of a day", Unit.WATT_HOUR, vital)
                        .as("E_vital")));
    }

    private static boolean isVital(Load load) {
        return load.tier().equals(Optional.of(Tier.VITAL));
    }
}
