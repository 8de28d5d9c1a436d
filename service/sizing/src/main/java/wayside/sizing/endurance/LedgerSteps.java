package wayside.sizing.endurance;

import java.util.ArrayList;
import java.util.List;
import wayside.sizing.journey.JourneyStay;
import wayside.sizing.journey.SkyUncertainty;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Input;
import wayside.sizing.trace.NamedOperation;
import wayside.sizing.trace.Source;
import wayside.sizing.trace.Unit;

/** The figures of the hourly ledger, each explained as one step from what went into it. */
final class LedgerSteps implements SimulatedFigures {
    private static final Source METHOD = Source.paper(
            "Egido & Lorenzo, The sizing of stand-alone PV systems, Solar Energy Materials and Solar Cells 26 (1992)",
            "loss of load by simulation; days by Bendt and others 1981, hours as in the solar yield");

    private static final NamedOperation CHANGED = NamedOperation.of(
            NamedOperation.Kind.SIMULATION,
            "share of the same runs that run flat with this one change; p0 without it",
            METHOD);

    private final Input[] grounds;

    LedgerSteps(EnduranceQuestion question) {
        List<Input> inputs = new ArrayList<>(List.of(
                question.charger().nominalEnergyWh().as("E"),
                question.age().as("a"),
                question.data().usableShare().as("f_use"),
                question.charger().acceptedW().as("P_max"),
                question.solarW().as("P"),
                question.start().as("s0"),
                question.runs().as("N")));
        inputs.addAll(question.journey().warmth());
        SkyUncertainty uncertainty = question.journey().uncertainty();
        for (JourneyStay stay : question.journey().stays()) {
            inputs.add(stay.budget().dailyTotalWh().as("E_d"));
            inputs.add(stay.month().yieldWhPerW().as("y"));
            inputs.add(stay.month().sky().clearness().as("KT"));
            inputs.add(stay.month().sky().clearnessSpread().as("s"));
            inputs.add(uncertainty.ofMeans().get(stay.index()).as("u"));
            inputs.addAll(stay.air());
        }
        if (question.brief().system().shoreW() > 0
                && question.journey().highestDemandHookedUp().isPresent()) {
            inputs.add(question.journey().hookupW().as("P_hookup"));
        }
        if (question.journey().source().drawsDays()) {
            inputs.add(uncertainty.ofSpread().as("v"));
        }
        grounds = inputs.toArray(Input[]::new);
    }

    @Override
    public Derived step(String label, double value, Unit unit, String text) {
        return NamedOperation.of(NamedOperation.Kind.SIMULATION, text, METHOD).value(label, value, unit, grounds);
    }

    /** A share of runs that only differ from the main answer by one change. */
    static Derived share(String label, int flat, int runs, Derived base) {
        return CHANGED.value(label, (double) flat / runs, Unit.SHARE, base.as("p0"));
    }
}
