package wayside.sizing.endurance;

import wayside.sizing.ledger.ConfidenceInterval;
import wayside.sizing.ledger.Outcome;
import wayside.sizing.ledger.RecordedWeather;
import wayside.sizing.ledger.Simulation;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Expression;
import wayside.sizing.trace.NamedOperation;
import wayside.sizing.trace.Source;
import wayside.sizing.trace.Unit;

/** The ledger's outcome as traced figures. */
record EnduranceFigures(EnduranceQuestion question, Outcome outcome, LedgerSteps steps) {
    /** Cold and high currents raise it. */
    private static final Expression FLOOR = Expression.commonPractice("s_min = 1 - f_use");

    private static final NamedOperation FEWER = NamedOperation.of(
            NamedOperation.Kind.NEXT_SIZE,
            "the first of the N runs, as many as some million simulated hours allow",
            Source.definition());

    Endurance.Chance chance() {
        Derived chance = steps.step(
                "chance of running flat",
                outcome.chance(),
                Unit.SHARE,
                "share of the N runs in which an essential load goes short in some hour");
        ConfidenceInterval interval = ConfidenceInterval.of(chance, question.runs());
        return new Endurance.Chance(chance, interval.low(), interval.high());
    }

    /** Of the same runs, the bank at the end of its life. */
    Derived whenOld(Derived chance) {
        double oldShare = question.data().endOfLifeShare().value();
        if (question.age().value() <= oldShare) {
            return chance;
        }
        return steps.step(
                "chance of running flat when the bank is old",
                (double) question.flatRuns(oldShare) / outcome.runs(),
                Unit.SHARE,
                "share of the N runs in which an essential load goes short, the bank aged to "
                        + question.data().endOfLifeShare().value() + " of its rated energy");
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
                "share of the first runs, in which changes are compared, that run flat");
    }

    /** How many runs changes and questions turned round are tried in. */
    Derived comparedRuns(RecordedWeather compared) {
        return compared.runs() == outcome.runs() ? question.runs() : fewerRuns(question, compared.runs());
    }

    /** Of a trip whose every run would take too long. */
    static Derived fewerRuns(EnduranceQuestion question, int runs) {
        return FEWER.value(
                "runs of a comparison, of " + runs,
                runs,
                Unit.COUNT,
                question.runs().as("N"));
    }

    Endurance.Sources sources() {
        return new Endurance.Sources(
                energy("energy from the sun", outcome.solarWh(), "taken from the array"),
                energy("energy from the engine", outcome.alternatorWh(), "taken from the alternator charger"),
                energy("energy from the hookup", outcome.shoreWh(), "taken from the shore charger"),
                energy("surplus energy of the sun", outcome.surplusWh(), "offered by the array, not taken"));
    }

    Endurance.Uses uses() {
        return new Endurance.Uses(
                energy("energy into the loads", outcome.loadsWh(), "delivered at the plugs"),
                energy("energy lost in the inverter", outcome.inverterWh(), "standing by and conversion"),
                energy("energy of standby", outcome.standbyWh(), "outlets, monitor, alarms"),
                energy("energy into the heater of the bank", outcome.heaterWh(), "while it is on"),
                energy("energy lost in the bank", outcome.storageLossWh(), "into the cells, out of them, standing"),
                energy("energy that the bank gains", outcome.storeGainWh(), "store at the end less store at the start"),
                energy(
                        "largest energy-balance error of any run",
                        outcome.worstImbalanceWh(),
                        "sources less uses, the worst of all runs"));
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
                        "energy out of the cells over the rated energy E, mean of the N runs"),
                steps.step(
                        "deepest discharge of any run",
                        outcome.deepestShare(),
                        Unit.SHARE,
                        "1 less the lowest state of charge of the N runs"),
                mean("deepest discharge of a usual run", outcome.usualDeepestShare(), Unit.SHARE),
                mean("hours in which the cold kept charge out", outcome.coldHours(), Unit.HOUR),
                energy("energy that the cold kept out", outcome.coldRefusedWh(), "what the bank would have taken"));
    }

    EnergyBalance balance() {
        return EnergyBalance.of(
                question.journey(),
                outcome,
                question.data(),
                question.charger().nominalEnergyWh(),
                question.age(),
                steps);
    }

    Derived floorShare() {
        return FLOOR.value(
                "state of charge that is left in a warm bank",
                Unit.SHARE,
                question.data().usableShare().as("f_use"));
    }

    private Derived mean(String label, double value, Unit unit) {
        return steps.step(label, value, unit, "mean of the N runs, hour by hour");
    }

    private Derived energy(String label, double value, String what) {
        return steps.step(
                label, value, Unit.WATT_HOUR, "sum over the hours of the trip, " + what + "; mean of the N runs");
    }
}
