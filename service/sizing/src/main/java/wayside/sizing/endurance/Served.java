package wayside.sizing.endurance;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import wayside.sizing.brief.Load;
import wayside.sizing.demand.LoadDemand;
import wayside.sizing.journey.Journey;
import wayside.sizing.ledger.Outcome;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Expression;
import wayside.sizing.trace.Input;
import wayside.sizing.trace.Unit;

/**
 * What the loads get on such trips.
 *
 * @param loads in the order of the load list
 * @param nights of the trip
 * @param comfortShare of what all comfort loads want together, what they get [share]; none without such loads
 */
public record Served(List<ServedLoad> loads, int nights, Optional<Derived> comfortShare) {
    private static final Expression TOGETHER = Expression.definition("s = sum(E s_one) / sum(E)");

    public Served {
        loads = List.copyOf(loads);
    }

    /**
     * What became of the loads of a trip.
     *
     * @param outcome of a simulation that followed its loads
     */
    public static Served of(Journey journey, Outcome outcome, SimulatedFigures figures) {
        List<Load> asked = journey.energy().loads();
        List<ServedLoad> loads = new ArrayList<>();
        for (int i = 0; i < asked.size(); i++) {
            String name = "load " + asked.get(i).name();
            loads.add(new ServedLoad(
                    asked.get(i),
                    figures.step(
                            name + ": share of its energy that it gets",
                            outcome.servedShare(i),
                            Unit.SHARE,
                            "energy delivered at its plug over energy wanted of the battery, mean of the N runs"),
                    figures.step(
                            name + ": nights on which it runs in full",
                            outcome.fullNights(i),
                            Unit.DAY,
                            "days of the trip without an hour in which it goes short, mean of the N runs")));
        }
        return new Served(loads, journey.trip().nights(), comfort(journey, loads));
    }

    private static Optional<Derived> comfort(Journey journey, List<ServedLoad> loads) {
        List<Input> inputs = new ArrayList<>();
        List<LoadDemand> demands = journey.highestDemand().budget().demand().loads();
        for (int i = 0; i < loads.size(); i++) {
            if (!loads.get(i).load().isEssential()
                    && demands.get(i).dailyEnergyWh().value() > 0) {
                inputs.add(demands.get(i).dailyEnergyWh().as("E"));
                inputs.add(loads.get(i).energyShare().as("s_one"));
            }
        }
        return inputs.isEmpty()
                ? Optional.empty()
                : Optional.of(TOGETHER.value("comfort loads: share of their energy that they get", Unit.SHARE, inputs));
    }

    /** The share that comfort loads get together, as a number [share]; 1 without such loads. */
    public static double comfortShare(Journey journey, Outcome outcome) {
        List<LoadDemand> demands = journey.highestDemand().budget().demand().loads();
        double wantedWh = 0;
        double gotWh = 0;
        for (int i = 0; i < demands.size(); i++) {
            if (!demands.get(i).load().isEssential()) {
                double wh = demands.get(i).dailyEnergyWh().value();
                wantedWh += wh;
                gotWh += wh * outcome.servedShare(i);
            }
        }
        return wantedWh > 0 ? gotWh / wantedWh : 1;
    }

    /** The load that stops most often, where one does not run on every night as people count them. */
    public Optional<ServedLoad> worst() {
        return loads.stream()
                .filter(load -> Math.round(load.fullNights().value()) < nights)
                .min(Comparator.<ServedLoad>comparingLong(
                                load -> Math.round(load.fullNights().value()))
                        .thenComparing(load -> load.energyShare().value()));
    }
}
