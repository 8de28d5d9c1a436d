package wayside.sizing;

import wayside.sizing.brief.EnduranceBrief;
import wayside.sizing.endurance.Endurance;
import wayside.sizing.endurance.EnduranceCautions;
import wayside.sizing.endurance.EnduranceChoices;
import wayside.sizing.endurance.EnduranceQuestion;
import wayside.sizing.journey.WeatherSource;
import wayside.sizing.ledger.Outcome;
import wayside.sizing.ledger.RecordedWeather;
import wayside.sizing.solar.epw.TypicalYear;
import wayside.sizing.trace.Answer;

/** Simulates a trip hour by hour in many runs, each in its own weather, and says how often it runs flat. */
public final class EnduranceSimulator {
    /** Simulated hours of one request: runs times hours of the trip. */
    public static final long MOST_HOURS = 20_000_000;

    private EnduranceSimulator() {}

    /** How the system lasts, in weather drawn from what its months are like. */
    public static Answer<Endurance> simulate(EnduranceBrief brief) {
        return answer(EnduranceQuestion.of(brief, WeatherSource.DRAWN));
    }

    /**
     * How the system lasts at the place of a typical year: in its hours, from any day of its months on, or in weather drawn about
     * its months' means.
     */
    public static Answer<Endurance> simulate(EnduranceBrief brief, TypicalYear year) {
        return answer(EnduranceQuestion.of(WeatherSource.at(year, brief), WeatherSource.of(year, brief.sampling())));
    }

    private static Answer<Endurance> answer(EnduranceQuestion question) {
        RecordedWeather compared = question.compared();
        Outcome outcome = question.outcome(compared);
        Endurance result = Endurance.of(question, outcome, compared);
        return new Answer<>(
                result, EnduranceChoices.of(question), EnduranceCautions.of(question, outcome, result.laws()));
    }
}
