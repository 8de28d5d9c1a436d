package wayside.sizing.trip;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wayside.sizing.brief.Stay;
import wayside.sizing.brief.Trip;
import wayside.sizing.endurance.RecordedWeather;
import wayside.sizing.endurance.Simulation;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Source;
import wayside.sizing.trace.Unit;

/** The question turned round: how much may it carry, and how long may the trip be, at a chance that is taken. */
final class EnduranceInverse {
    private static final double ACCEPTED = 0.05;
    private static final double MOST_LOAD = 16;
    private static final int HALVINGS = 12;
    private static final int MORE_NIGHTS = 60;
    private static final int MOST_NIGHTS = 366;

    private final EnduranceQuestion question;
    private final RecordedWeather weather;
    private final LedgerSteps steps;
    private final Derived accepted;

    EnduranceInverse(EnduranceQuestion question, RecordedWeather weather, LedgerSteps steps) {
        this.question = question;
        this.weather = weather;
        this.steps = steps;
        accepted = Derived.byDefault(
                        "accepted chance of running flat",
                        ACCEPTED,
                        Unit.SHARE,
                        question.brief().at("acceptedChance"),
                        "One trip in twenty; for the questions turned round only",
                        Source.commonPractice())
                .unlessGiven(question.brief().acceptedChance());
    }

    Derived accepted() {
        return accepted;
    }

    /** What all loads may be multiplied by; 16 at most. */
    Derived loadFactor() {
        Scenario scenario = question.scenario();
        double low = 0;
        double high = MOST_LOAD;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = i == 0 ? 1 : (low + high) / 2;
            if (carried(scenario.withLoads(middle))) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return steps.step(
                "loads that would just be carried, as a multiple",
                low,
                Unit.COUNT,
                "largest f, up to 16, with n_flat / N not above the accepted chance; found by halving");
    }

    private boolean carried(Scenario scenario) {
        int flat = Simulation.flatRuns(scenario.ledger(), weather, weather.runs());
        return flat <= accepted.value() * weather.runs();
    }

    /** Nights that are passed at the accepted chance when the last stay is as long as it likes. */
    Optional<Derived> nights() {
        int nights = nights(longTrip());
        return nights == 0
                ? Optional.empty()
                : Optional.of(steps.step(
                        "nights that the trip may last",
                        nights,
                        Unit.DAY,
                        "most nights with n_flat / N not above the accepted chance, the last stay being lengthened"));
    }

    boolean isMore(Optional<Derived> nights) {
        return nights.isPresent() && nights.get().value() >= longTrip().nights();
    }

    private int nights(Trip trip) {
        EnduranceQuestion asked = EnduranceQuestion.of(question.brief().on(trip), question.skies());
        int runs = Math.min(
                weather.runs(), Math.max(100, 1_000_000 / asked.weather().hours()));
        int[] hours = Simulation.firstFlatHours(asked.scenario().ledger(), asked.weather(), runs);
        int taken = (int) Math.floor(accepted.value() * runs);
        return taken >= runs ? trip.nights() : hours[taken] / 24;
    }

    private Trip longTrip() {
        List<Stay> stays = new ArrayList<>(question.brief().trip().stays());
        Stay last = stays.remove(stays.size() - 1);
        int room = Math.max(0, MOST_NIGHTS - question.brief().trip().nights());
        stays.add(new Stay(
                last.at(),
                last.place(),
                last.month(),
                last.nights() + Math.min(MORE_NIGHTS, room),
                last.sky(),
                last.ambient(),
                last.drivingHoursPerDay(),
                last.hookupHoursPerDay()));
        return new Trip(question.brief().trip().at(), stays);
    }
}
