package wayside.sizing;

import wayside.sizing.brief.EnduranceBrief;
import wayside.sizing.endurance.Outcome;
import wayside.sizing.endurance.RecordedWeather;
import wayside.sizing.solar.epw.TypicalYear;
import wayside.sizing.trace.Answer;
import wayside.sizing.trip.Endurance;
import wayside.sizing.trip.EnduranceCautions;
import wayside.sizing.trip.EnduranceChoices;
import wayside.sizing.trip.EnduranceQuestion;
import wayside.sizing.trip.Skies;

/** Lives a trip hour by hour in many possible weathers, and says how often it runs flat. */
public final class EnduranceSimulator {
    /** Simulated hours of one request: runs times hours of the trip. */
    public static final long MOST_HOURS = 20_000_000;

    private EnduranceSimulator() {}

    /** How the system lasts, in weather drawn from what its months are like. */
    public static Answer<Endurance> simulate(EnduranceBrief brief) {
        return answer(EnduranceQuestion.of(brief, Skies.DRAWN));
    }

    /**
     * How the system lasts at the place of a typical year: in its hours, lived from any day of its months, or in weather drawn about
     * its months' means.
     */
    public static Answer<Endurance> simulate(EnduranceBrief brief, TypicalYear year) {
        return answer(EnduranceQuestion.of(Skies.at(year, brief), Skies.of(year, brief.sampling())));
    }

    private static Answer<Endurance> answer(EnduranceQuestion question) {
        RecordedWeather compared = question.compared();
        Outcome outcome = question.outcome(compared);
        Endurance result = Endurance.of(question, outcome, compared);
        return new Answer<>(
                result, result.figures(), EnduranceChoices.of(question), EnduranceCautions.of(question, outcome));
    }
}
