package wayside.sizing.endurance;

import java.util.ArrayList;
import java.util.List;
import wayside.sizing.brief.Load;
import wayside.sizing.brief.Sampling;
import wayside.sizing.brief.Trip;
import wayside.sizing.trace.Assumption;
import wayside.sizing.trace.Source;

/** Defaults of an hourly trip that are no numbers. */
public final class EnduranceChoices {
    private static final Source DAYS = Source.paper(
            "Bendt, Collares-Pereira & Rabl, The frequency distribution of daily insolation values, Solar Energy 27 (1981)",
            "deviations scaled to the place");

    private EnduranceChoices() {}

    public static List<Assumption> of(EnduranceQuestion question) {
        List<Assumption> choices =
                new ArrayList<>(question.journey().stays().get(0).budget().choices());
        choices.addAll(question.journey().choices());
        choices.addAll(ofTravel(question.brief().trip(), question.brief().loads()));
        if (question.journey().source().drawsDays()) {
            choices.addAll(ofDays(question.brief().sampling()));
        } else if (question.brief().sampling().yearReading().isEmpty()) {
            choices.add(choice(
                    question.brief().sampling().at("yearReading"),
                    "what is read from the typical year",
                    "hours",
                    "Its own days in their own order; means would draw days about its months"));
        }
        return choices;
    }

    /** Whose spread the drawn days have. */
    public static List<Assumption> ofDays(Sampling sampling) {
        return sampling.daySpread().isPresent()
                ? List.of()
                : List.of(Assumption.choice(
                        sampling.at("daySpread"),
                        "how much days differ",
                        "place",
                        "As in the place's own typical years; Bendt's published spread is darker than real days",
                        DAYS));
    }

    /** How the hours of a day are taken. */
    public static List<Assumption> ofTravel(Trip trip, List<Load> loads) {
        List<Assumption> choices = new ArrayList<>();
        choices.add(convention(
                "hours of the day",
                "solar time",
                "The sun stands highest at 12:00; windows and drives are read by the same clock"));
        if (trip.stays().stream().anyMatch(stay -> stay.drivingHours() > 0)) {
            choices.add(convention(
                    "hours of driving",
                    "from 10:00 on",
                    "People leave in the morning; the sun then competes with the engine for the battery"));
        }
        if (trip.stays().stream().anyMatch(stay -> stay.hookupHours() > 0)) {
            choices.add(convention(
                    "hours at a hookup",
                    "from 18:00 on",
                    "For the evening and the night; all loads then run through the shore charger"));
        }
        if (loads.stream().anyMatch(load -> !load.isEssential())) {
            choices.add(convention(
                    "loads that are not essential",
                    "shed at the last quarter",
                    "They stop when a quarter of the usable energy is left, so that the essential ones go on"));
        }
        return choices;
    }

    private static Assumption convention(String label, String value, String reason) {
        return Assumption.convention(label, value, reason, Source.commonPractice());
    }

    private static Assumption choice(String field, String label, String value, String reason) {
        return Assumption.choice(field, label, value, reason, Source.commonPractice());
    }
}
