package wayside.sizing.endurance;

import java.util.Arrays;
import java.util.Optional;
import wayside.sizing.brief.EnergyBrief;
import wayside.sizing.journey.Journey;
import wayside.sizing.ledger.RecordedWeather;
import wayside.sizing.ledger.Scenario;
import wayside.sizing.ledger.Simulation;
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
    private static final int FEWEST_RUNS = 100;
    private static final int FEW_RUNS = 200;
    /** Simulated hours of the nights: they bound the time of an answer. */
    private static final int NIGHTS_HOURS = 4_000_000;

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

    /** What all loads may be multiplied by, through the inverter as it is; 16 at most. */
    Derived loadFactor() {
        EnergyBrief energy = question.journey().energyThroughTheInverter();
        double low = 0;
        double high = MOST_LOAD;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = i == 0 ? 1 : (low + high) / 2;
            if (carried(question.scenario(question.journey().taking(energy.drawing(middle))))) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return steps.step(
                "loads that would just be carried, as a multiple",
                low,
                Unit.COUNT,
                "largest multiple, up to 16, with which the share of runs that run flat is not above the accepted chance, the"
                        + " inverter as it is; found by halving");
    }

    private boolean carried(Scenario scenario) {
        return Simulation.flatRuns(scenario.ledger(), weather, weather.runs()) <= taken(weather.runs());
    }

    /** How many of the runs may go flat at the accepted chance. */
    private int taken(int runs) {
        int most = (int) Math.ceil(accepted.value() * runs);
        return (double) most / runs <= accepted.value() ? most : most - 1;
    }

    /** How many runs the nights are counted in. */
    Derived nightsRuns() {
        int runs = runsOfNights();
        return runs == (int) question.runs().value() ? question.runs() : EnduranceFigures.fewerRuns(question, runs);
    }

    private int runsOfNights() {
        return Math.min(weather.runs(), Math.max(FEWEST_RUNS, NIGHTS_HOURS / (Unit.HOURS_PER_DAY * mostNights())));
    }

    private int mostNights() {
        int asked = question.brief().trip().nights();
        return Math.max(asked, Math.min(asked + MORE_NIGHTS, MOST_NIGHTS));
    }

    /** Nights that are passed at the accepted chance when the last stay is as long as it likes. */
    Optional<Derived> nights() {
        int nights = nightsOf(runsOfNights());
        return nights == 0
                ? Optional.empty()
                : Optional.of(steps.step(
                        "nights that the trip may last",
                        nights,
                        Unit.DAY,
                        "most nights with which the share of runs that run flat is not above the accepted chance, the last stay being"
                                + " lengthened"));
    }

    boolean isMore(Optional<Derived> nights) {
        return nights.isPresent() && nights.get().value() >= mostNights();
    }

    /** A few runs tell how long the others need be followed; where that was too short, all are followed to the end. */
    private int nightsOf(int runs) {
        int few = Math.min(runs, FEW_RUNS);
        int far = firstFlatNights(mostNights(), few)[Math.min(few - 1, 2 * taken(few) + few / 40)] + 1;
        if (far < mostNights()) {
            int nights = firstFlatNights(far, runs)[taken(runs)];
            if (nights < far) {
                return nights;
            }
        }
        return firstFlatNights(mostNights(), runs)[taken(runs)];
    }

    /** Full nights before each run goes flat on a trip of so many, sorted. */
    private int[] firstFlatNights(int nights, int runs) {
        Journey asked = question.journey().lasting(nights);
        int[] hours = Simulation.firstFlatHours(question.scenario(asked).ledger(), asked.weather(), runs);
        return Arrays.stream(hours).map(hour -> hour / Unit.HOURS_PER_DAY).toArray();
    }
}
