package wayside.sizing.chance;

import java.util.ArrayList;
import java.util.List;
import wayside.sizing.endurance.Endurance;
import wayside.sizing.endurance.SimulatedFigures;
import wayside.sizing.journey.Journey;
import wayside.sizing.journey.JourneyStay;
import wayside.sizing.ledger.ConfidenceInterval;
import wayside.sizing.system.Chargers;
import wayside.sizing.system.SizePair;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Input;
import wayside.sizing.trace.NamedOperation;
import wayside.sizing.trace.Source;
import wayside.sizing.trace.Unit;

/** Figures out of the simulation of a pair, each explained as one step from what went into it. */
final class ChanceSteps implements SimulatedFigures {
    private static final Source METHOD = Source.paper(
            "Egido & Lorenzo, The sizing of stand-alone PV systems, Solar Energy Materials and Solar Cells 26 (1992)",
            "iso-reliability curve by simulation; days by Bendt and others 1981");

    private final String whose;
    private final Derived runs;
    private final Input[] grounds;

    /**
     * Of a pair on a trip.
     *
     * @param whose opens the labels of what is not the answer's own
     */
    ChanceSteps(ChanceTrip trip, String whose, SizePair pair) {
        this.whose = whose;
        runs = trip.runs();
        grounds = grounds(trip, whose, pair);
    }

    private static Input[] grounds(ChanceTrip trip, String whose, SizePair pair) {
        Journey journey = trip.journey();
        Derived nominalWh = pair.nominalEnergyWh().orElseThrow();
        List<Input> inputs = new ArrayList<>(
                List.of(nominalWh.as("E"), trip.age().as("a"), trip.runs().as("N")));
        inputs.addAll(journey.warmth());
        Chargers chargers = Chargers.of(trip.site(), nominalWh, whose, pair.engineChargerA());
        chargers.alternator()
                .ifPresent(alternator -> inputs.add(alternator.chargerPowerW().as("P_alternator")));
        chargers.shore().ifPresent(shore -> inputs.add(shore.chargerPowerW().as("P_shore")));
        pair.solarPowerW().ifPresent(power -> inputs.add(power.as("P")));
        for (JourneyStay stay : journey.stays()) {
            inputs.add(stay.budget().dailyTotalWh().as("E_d"));
            inputs.add(stay.month().yieldWhPerW().as("y"));
            inputs.add(stay.month().sky().clearnessSpread().as("s"));
            inputs.add(journey.uncertainty().ofMeans().get(stay.index()).as("u"));
            inputs.addAll(stay.air());
        }
        inputs.add(journey.uncertainty().ofSpread().as("v"));
        return inputs.toArray(Input[]::new);
    }

    @Override
    public Derived step(String label, double value, Unit unit, String text) {
        return NamedOperation.of(NamedOperation.Kind.SIMULATION, text, METHOD)
                .value(whose + label, value, unit, grounds);
    }

    /** A share of the runs that run flat. */
    Endurance.Chance chance(double share) {
        Derived chance = step(
                "chance of running flat",
                share,
                Unit.SHARE,
                "share of the N runs in which an essential load goes short in some hour, the bank aged to a share a");
        ConfidenceInterval interval = ConfidenceInterval.of(chance, runs);
        return new Endurance.Chance(chance, interval.low(), interval.high());
    }
}
