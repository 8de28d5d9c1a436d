package wayside.sizing.endurance;

import java.util.List;
import java.util.Optional;
import wayside.sizing.laws.Laws;
import wayside.sizing.ledger.Outcome;
import wayside.sizing.ledger.RecordedWeather;
import wayside.sizing.ledger.WorstRun;
import wayside.sizing.trace.AdviceCode;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Message;

/**
 * How a system lasts on a trip. Energies are means over all runs, for the whole trip.
 *
 * @param chance that it runs flat, with its 95 % confidence interval
 * @param whenOld the same in these runs with a bank at the end of its life
 * @param runs how often the trip was simulated
 * @param seed of the weather
 * @param sources where the energy comes from
 * @param uses where it goes
 * @param shortfall what is missed
 * @param cycles what the bank goes through
 * @param served what each load gets
 * @param balance of the average day
 * @param bands state of charge by hour
 * @param floorShare state of charge below which a warm bank gives no more
 * @param worst the run that ended worst
 * @param worstMessage the same to tell
 * @param advice the answer
 * @param acceptedChance of the questions turned round
 * @param loadFactor all loads times this would just be carried at that chance
 * @param nights that such a trip may last at that chance; empty when even the first is too many
 * @param nightsAreMore whether it may be more than that
 * @param nightsRuns how many of the runs the nights are counted in
 * @param comparedRuns how many of the runs the load factor and what helps are tried in
 * @param whatHelps one change each, the most helpful first
 * @param laws what must hold between the parts of the system
 */
public record Endurance(
        Chance chance,
        Derived whenOld,
        Derived runs,
        long seed,
        Sources sources,
        Uses uses,
        Shortage shortfall,
        Cycles cycles,
        Served served,
        EnergyBalance balance,
        Bands bands,
        Derived floorShare,
        WorstRun worst,
        Message worstMessage,
        Message advice,
        Derived acceptedChance,
        Derived loadFactor,
        Optional<Derived> nights,
        boolean nightsAreMore,
        Derived nightsRuns,
        Derived comparedRuns,
        List<WhatHelps> whatHelps,
        Laws laws) {
    public Endurance {
        whatHelps = List.copyOf(whatHelps);
    }

    /**
     * What an outcome means for the question.
     *
     * @param compared weather in which changes and questions turned round are tried
     */
    public static Endurance of(EnduranceQuestion question, Outcome outcome, RecordedWeather compared) {
        LedgerSteps steps = new LedgerSteps(question);
        EnduranceFigures figures = new EnduranceFigures(question, outcome, steps);
        Chance chance = figures.chance();
        List<WhatHelps> changes = EnduranceChanges.ranked(
                question,
                compared,
                figures.comparedChance(compared, chance.value()),
                figures.comparedRuns(compared),
                outcome.coldHours());
        EnduranceInverse inverse = new EnduranceInverse(question, compared, steps);
        Optional<Derived> nights = inverse.nights();
        Served served = Served.of(question.journey(), outcome, steps);
        EnergyBalance balance = figures.balance();
        return new Endurance(
                chance,
                figures.whenOld(chance.value()),
                question.runs(),
                question.brief().sampling().weatherSeed(),
                figures.sources(),
                figures.uses(),
                figures.shortage(),
                figures.cycles(),
                served,
                balance,
                new Bands(outcome),
                figures.floorShare(),
                outcome.worst(),
                EnduranceMessages.worst(outcome),
                EnduranceMessages.withWhatIsServed(
                        EnduranceMessages.advice(
                                AdviceCode.RUNS_FLAT,
                                question.charger().nominalEnergyWh(),
                                question.solarW(),
                                outcome.chance(),
                                changes),
                        served,
                        balance),
                inverse.accepted(),
                inverse.loadFactor(),
                nights,
                inverse.isMore(nights),
                inverse.nightsRuns(),
                figures.comparedRuns(compared),
                changes,
                EnduranceLaws.of(question));
    }

    /** A chance and its range. */
    public record Chance(Derived value, Derived low, Derived high) {}

    /** What sun, engine and hookup gave, and surplus energy of the sun [Wh]. */
    public record Sources(Derived solarWh, Derived alternatorWh, Derived shoreWh, Derived surplusWh) {}

    /** Loads, losses, what the bank gained, and what the sum misses [Wh]. */
    public record Uses(
            Derived loadsWh,
            Derived inverterLossWh,
            Derived standbyWh,
            Derived heaterWh,
            Derived storageLossWh,
            Derived storeGainWh,
            Derived balanceErrorWh) {}

    /** Essential energy and hours short, other energy shed. */
    public record Shortage(Derived unmetWh, Derived unmetHours, Derived shedWh) {}

    /** Full cycles, the deepest discharge of any run, the usual one, and what the cold kept out. */
    public record Cycles(
            Derived equivalentFull,
            Derived deepestShare,
            Derived usualDeepestShare,
            Derived coldLockoutHours,
            Derived coldLockoutWh) {}

    /** State of charge by hour: what 5, 50 and 95 % of the runs do not exceed. */
    public static final class Bands {
        private final int[] hours;
        private final double[][] quantiles;
        private final double[][] quantilesC;

        Bands(Outcome outcome) {
            hours = outcome.bands().hours();
            quantiles = outcome.bands().quantiles(0.05, 0.5, 0.95);
            quantilesC = outcome.warmth().quantilesC(0.05, 0.5, 0.95);
        }

        /** Hours since the first midnight. */
        public int[] hours() {
            return hours.clone();
        }

        /** Temperature of the bank [C]: what 5, 50 and 95 % of the runs do not exceed, each by hour. */
        public double[][] bankC() {
            return new double[][] {quantilesC[0].clone(), quantilesC[1].clone(), quantilesC[2].clone()};
        }

        public double[] p05() {
            return quantiles[0].clone();
        }

        public double[] p50() {
            return quantiles[1].clone();
        }

        public double[] p95() {
            return quantiles[2].clone();
        }
    }
}
