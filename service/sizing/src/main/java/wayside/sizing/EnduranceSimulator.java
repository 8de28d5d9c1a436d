package wayside.sizing;

import java.util.List;
import java.util.Optional;
import wayside.sizing.brief.EnduranceBrief;
import wayside.sizing.endurance.Outcome;
import wayside.sizing.endurance.RecordedWeather;
import wayside.sizing.endurance.Simulation;
import wayside.sizing.solar.epw.TypicalYear;
import wayside.sizing.trace.Answer;
import wayside.sizing.trace.Derived;

/** Lives a trip hour by hour in many possible weathers, and says how often it runs flat. */
public final class EnduranceSimulator {
    /** Simulated hours of one request: runs times hours of the trip. */
    public static final long MOST_HOURS = 20_000_000;

    /** Runs for the comparisons beside the main answer. */
    private static final int COMPARED_RUNS = 1000;

    private EnduranceSimulator() {}

    /** How the system lasts, in weather drawn from what its months are like. */
    public static Answer<Endurance> simulate(EnduranceBrief brief) {
        return answer(EnduranceQuestion.of(brief, Skies.DRAWN));
    }

    /** How the system lasts in the hours of a typical year, lived from any day of its months. */
    public static Answer<Endurance> simulate(EnduranceBrief brief, TypicalYear year) {
        return answer(EnduranceQuestion.of(Skies.at(year, brief), Skies.replayed(year)));
    }

    static Answer<Endurance> answer(EnduranceQuestion question) {
        int runs = (int) question.runs().value();
        Outcome outcome = Simulation.simulate(question.scenario().ledger(), question.weather(), runs);
        LedgerSteps steps = new LedgerSteps(question);
        EnduranceFigures figures = new EnduranceFigures(question, outcome, steps);
        Endurance.Chance chance = figures.chance();
        RecordedWeather compared = RecordedWeather.of(question.weather(), Math.min(runs, COMPARED_RUNS));
        List<WhatHelps> changes = EnduranceChanges.ranked(question, compared, chance.value());
        EnduranceInverse inverse = new EnduranceInverse(question, compared, steps);
        Optional<Derived> nights = inverse.nights();
        Endurance result = new Endurance(
                chance,
                question.runs(),
                question.brief().seed(),
                figures.sources(),
                figures.uses(),
                figures.shortage(),
                figures.cycles(),
                new Endurance.Bands(outcome),
                figures.floorShare(),
                outcome.worst(),
                EnduranceWords.worst(outcome),
                EnduranceWords.advice(question, outcome, changes),
                inverse.accepted(),
                inverse.loadFactor(),
                nights,
                inverse.isMore(nights),
                changes);
        return new Answer<>(
                result, result.figures(), EnduranceChoices.of(question), EnduranceCautions.of(question, outcome));
    }
}
