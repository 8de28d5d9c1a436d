package wayside.sizing.chance;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import wayside.sizing.brief.BankRates;
import wayside.sizing.endurance.Endurance;
import wayside.sizing.journey.Journey;
import wayside.sizing.journey.JourneyStay;
import wayside.sizing.ledger.BankBounds;
import wayside.sizing.ledger.ConfidenceInterval;
import wayside.sizing.ledger.LaterRuns;
import wayside.sizing.ledger.LedgerDay;
import wayside.sizing.ledger.RecordedWeather;
import wayside.sizing.ledger.Scenario;
import wayside.sizing.ledger.Simulation;
import wayside.sizing.ledger.Weather;
import wayside.sizing.storage.ChemistryData;
import wayside.sizing.system.Chargers;
import wayside.sizing.system.Site;
import wayside.sizing.system.SizePair;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Expression;
import wayside.sizing.trace.Input;
import wayside.sizing.trace.NamedOperation;
import wayside.sizing.trace.Source;
import wayside.sizing.trace.Unit;

/**
 * A trip on which banks and arrays are tried, all in the same runs. The bank counts as worn out: what is sized today must
 * last to the end of its life.
 */
final class ChanceTrip {
    private static final int RUNS = 2000;
    private static final int SEARCH_RUNS = 1000;
    private static final int FEWEST_SEARCHED = 100;
    /** Simulated hours of one trial in the search, and of the confirmation: they bound the time of an answer. */
    private static final int SEARCHED_HOURS = 400_000;

    private static final int MOST_HOURS = 4_000_000;
    private static final Source METHOD = Source.paper(
            "Egido & Lorenzo, The sizing of stand-alone PV systems, Solar Energy Materials and Solar Cells 26 (1992)",
            "iso-reliability curve by simulation; days by Bendt and others 1981");

    private static final Expression CONFIRMED = Expression.definition("N = min(n, n_max)");
    private static final NamedOperation CHANCE = NamedOperation.of(
            NamedOperation.Kind.SIMULATION,
            "share of the N runs in which an essential load goes short in some hour, the bank aged to a share a",
            METHOD);

    private static final NamedOperation COLD_HOURS = NamedOperation.of(
            NamedOperation.Kind.SIMULATION,
            "mean of the N runs of the hours in which charge is on offer and the bank is too cold for it",
            METHOD);

    private final Site site;
    private final Journey journey;
    private final Weather weather;
    private final RecordedWeather searched;
    private final int searchedRuns;
    private final Derived runs;
    private final Derived age;

    ChanceTrip(Site site) {
        this.site = site;
        journey = site.journey();
        Weather drawn = journey.weather();
        runs = runs(site, drawn.hours());
        int all = (int) runs.value();
        RecordedWeather confirming = RecordedWeather.of(drawn, all);
        weather = confirming.runs() == all ? confirming : drawn;
        int affordable = Math.max(FEWEST_SEARCHED, SEARCHED_HOURS / drawn.hours());
        // Other runs than the confirming ones: the best of many pairs owes some of its luck to the runs it was found
        // in.
        searched = RecordedWeather.of(new LaterRuns(drawn, all), Math.min(all, Math.min(SEARCH_RUNS, affordable)));
        searchedRuns = searched.runs();
        age = site.chemistry().endOfLifeShare();
    }

    private static Derived runs(Site site, int hours) {
        OptionalInt given = site.brief().sampling().runs();
        Derived wanted = Derived.byDefault(
                        "runs of the trip, wanted",
                        RUNS,
                        Unit.COUNT,
                        site.brief().sampling().at("runs"),
                        "Tells three in a hundred from two",
                        Source.definition())
                .unlessGiven(given);
        Derived affordable = Derived.convention(
                "runs that four million simulated hours allow",
                Math.max(FEWEST_SEARCHED, MOST_HOURS / hours),
                Unit.COUNT,
                "An answer comes within a second",
                Source.definition());
        return CONFIRMED.value("runs of the trip", Unit.COUNT, wanted.as("n"), affordable.as("n_max"));
    }

    Site site() {
        return site;
    }

    Journey journey() {
        return journey;
    }

    Derived runs() {
        return runs;
    }

    /** Whether no stay has any sun. */
    boolean isDark() {
        return journey.stays().stream()
                .allMatch(stay -> stay.month().yieldWhPerW().value() == 0);
    }

    /** A pair with the chargers that go with such a bank. */
    Scenario scenario(double nominalWh, double solarW) {
        return scenario(journey, chargers(nominalWh), nominalWh, solarW);
    }

    /** A pair with other chargers, or on a changed trip. */
    Scenario scenario(Journey changed, Chargers chargers, double nominalWh, double solarW) {
        double alternatorW =
                chargers.alternator().map(a -> a.chargerPowerW().value()).orElse(0.0);
        double shoreW = chargers.shore().map(s -> s.chargerPowerW().value()).orElse(0.0);
        List<LedgerDay> days = changed.days(alternatorW, shoreW);
        return new Scenario(
                days, changed.heater(), site.chemistry(), nominalWh, age.value(), solarW, 1, bounds(chargers));
    }

    private BankBounds bounds(Chargers chargers) {
        BankRates rates = site.brief().system().bankRates();
        ChemistryData data = site.chemistry();
        double lowestV = data.cellsInSeries(site.busVoltageV().value()).value()
                * data.lowestCellVoltageV().value();
        return BankBounds.of(
                rates.maximumChargeA(), chargers.need().chargingVoltageV().value(), rates.maximumDischargeA(), lowestV);
    }

    /** Those that go with a bank of a size [Wh]. */
    Chargers chargers(double nominalWh) {
        return Chargers.of(
                site,
                Derived.convention(
                        "rated energy tried", nominalWh, Unit.WATT_HOUR, "One of those tried", Source.definition()));
    }

    /** Share of the searched runs that run flat. */
    double searchedShare(Scenario scenario) {
        return (double) Simulation.flatRuns(scenario.ledger(), searched, searchedRuns) / searchedRuns;
    }

    /** Share of all runs that run flat. */
    double share(Scenario scenario) {
        return (double) flat(scenario) / (int) runs.value();
    }

    private int flat(Scenario scenario) {
        return Simulation.flatRuns(scenario.ledger(), weather, (int) runs.value());
    }

    /** The chance in all runs, traced. */
    Endurance.Chance chance(Scenario scenario, String whose, Derived nominalWh, Optional<Derived> solarW) {
        Derived chance = CHANCE.value(
                whose + "chance of running flat", share(scenario), Unit.SHARE, grounds(whose, nominalWh, solarW));
        ConfidenceInterval interval = ConfidenceInterval.of(chance, runs);
        return new Endurance.Chance(chance, interval.low(), interval.high());
    }

    /** Hours of a usual trip in which charge is on offer and the cold keeps it out of the bank of a pair [h]. */
    Derived coldHours(SizePair pair) {
        Derived nominal = pair.nominalEnergyWh().orElseThrow();
        Derived solarW = pair.solarPowerW().orElseThrow();
        Scenario scenario = scenario(nominal.value(), solarW.value());
        return COLD_HOURS.value(
                "hours in which the cold kept charge out",
                Simulation.coldHours(scenario.ledger(), weather, (int) runs.value()),
                Unit.HOUR,
                grounds("", nominal, Optional.of(solarW)));
    }

    private Input[] grounds(String whose, Derived nominalWh, Optional<Derived> solarW) {
        List<Input> inputs = new ArrayList<>(List.of(nominalWh.as("E"), age.as("a"), runs.as("N")));
        inputs.addAll(journey.warmth());
        Chargers chargers = Chargers.of(site, nominalWh, whose);
        chargers.alternator()
                .ifPresent(alternator -> inputs.add(alternator.chargerPowerW().as("P_alternator")));
        chargers.shore().ifPresent(shore -> inputs.add(shore.chargerPowerW().as("P_shore")));
        solarW.ifPresent(power -> inputs.add(power.as("P")));
        for (JourneyStay stay : journey.stays()) {
            inputs.add(stay.budget().dailyTotalWh().as("E_d"));
            inputs.add(stay.month().yieldWhPerW().as("y"));
            inputs.add(stay.month().sky().clearnessSpread().as("s"));
            inputs.add(journey.uncertainty().ofMeans().get(stay.index()).as("u"));
            inputs.addAll(stay.air());
        }
        inputs.add(journey.uncertainty().ofSpread().as("v"));
        return inputs.toArray(Input[]::new);
    }
}
