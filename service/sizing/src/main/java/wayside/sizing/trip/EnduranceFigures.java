package wayside.sizing.trip;

import wayside.sizing.endurance.Outcome;
import wayside.sizing.endurance.Proportion;
import wayside.sizing.endurance.RecordedWeather;
import wayside.sizing.endurance.Simulation;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Formula;
import wayside.sizing.trace.Unit;

/** The ledger's outcome as traced figures. */
record EnduranceFigures(EnduranceQuestion question, Outcome outcome, LedgerSteps steps) {
    Endurance.Chance chance() {
        Proportion chance = outcome.chance();
        String range = "Wilson's range of 95 % for p = n_flat / N";
        return new Endurance.Chance(
                steps.step(
                        "chance of running flat",
                        chance.value(),
                        Unit.SHARE,
                        "p = n_flat / N: lives of the trip in which an essential load goes short in some hour"),
                steps.step("chance of running flat, low end", chance.low(), Unit.SHARE, range),
                steps.step("chance of running flat, high end", chance.high(), Unit.SHARE, range));
    }

    /**
     * The chance that changes are compared with: of the same runs as theirs.
     *
     * @param chance of all runs
     */
    Derived comparedChance(RecordedWeather compared, Derived chance) {
        if (compared.runs() == outcome.runs()) {
            return chance;
        }
        int flat = Simulation.flatRuns(question.scenario().ledger(), compared, compared.runs());
        return steps.step(
                "chance of running flat in the first runs",
                (double) flat / compared.runs(),
                Unit.SHARE,
                "p = n_flat / n of the first n runs, in which changes are compared");
    }

    /** How many runs changes and questions turned round are tried in. */
    Derived comparedRuns(RecordedWeather compared) {
        return compared.runs() == outcome.runs() ? question.runs() : fewerRuns(question, compared.runs());
    }

    /** Of a trip whose every run would take too long. */
    static Derived fewerRuns(EnduranceQuestion question, int runs) {
        return Derived.computed(
                "trips lived for a comparison",
                runs,
                Unit.COUNT,
                Formula.definition("n = the first of the N runs that some million simulated hours allow"),
                question.runs().as("N"));
    }

    Endurance.Sources sources() {
        return new Endurance.Sources(
                energy("energy from the sun", outcome.solarWh(), "taken from the array"),
                energy("energy from the engine", outcome.alternatorWh(), "taken from the alternator charger"),
                energy("energy from the hookup", outcome.shoreWh(), "taken from the shore charger"),
                energy("energy that the sun offered in vain", outcome.surplusWh(), "offered by the array, not taken"));
    }

    Endurance.Uses uses() {
        return new Endurance.Uses(
                energy("energy into the loads", outcome.loadsWh(), "delivered at the plugs"),
                energy("energy lost in the inverter", outcome.inverterWh(), "standing by and conversion"),
                energy("energy of standby", outcome.standbyWh(), "outlets, monitor, alarms"),
                energy("energy lost in the bank", outcome.storageLossWh(), "into the cells, out of them, standing"),
                energy("energy that the bank gains", outcome.storeGainWh(), "store at the end less store at the start"),
                energy("what the books miss", outcome.worstImbalanceWh(), "sources - uses, the worst of all lives"));
    }

    Endurance.Shortage shortage() {
        return new Endurance.Shortage(
                energy("essential energy that goes short", outcome.unmetWh(), "wanted, not delivered"),
                mean("hours in which essential loads go short", outcome.unmetHours(), Unit.HOUR),
                energy("other energy that is shed", outcome.shedWh(), "wanted, not delivered"));
    }

    Endurance.Cycles cycles() {
        return new Endurance.Cycles(
                steps.step(
                        "full cycles of the bank",
                        outcome.equivalentCycles(),
                        Unit.COUNT,
                        "n = E_out / E, E_out the energy out of the cells, mean of N lives"),
                steps.step(
                        "deepest discharge of any life",
                        outcome.deepestShare(),
                        Unit.SHARE,
                        "1 - lowest state of charge of N lives"),
                mean("deepest discharge of a usual life", outcome.usualDeepestShare(), Unit.SHARE),
                mean("hours in which the cold kept charge out", outcome.coldHours(), Unit.HOUR),
                energy("energy that the cold kept out", outcome.coldRefusedWh(), "what the bank would have taken"));
    }

    Derived floorShare() {
        return Derived.computed(
                "state of charge that is left in a warm bank",
                1 - question.data().usableShare().value(),
                Unit.SHARE,
                Formula.commonPractice("s_min = 1 - f_use; the cold and high currents raise it"),
                question.data().usableShare().as("f_use"));
    }

    private Derived mean(String label, double value, Unit unit) {
        return steps.step(label, value, unit, "mean of N lives of the hourly ledger");
    }

    private Derived energy(String label, double value, String what) {
        return steps.step(label, value, Unit.WATT_HOUR, "sum over the trip's hours, " + what + "; mean of N lives");
    }
}
