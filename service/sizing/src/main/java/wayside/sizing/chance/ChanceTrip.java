package wayside.sizing.chance;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import wayside.sizing.brief.EnergyBrief;
import wayside.sizing.brief.PanelMount;
import wayside.sizing.brief.SystemWishes;
import wayside.sizing.ledger.LedgerDay;
import wayside.sizing.ledger.ConfidenceInterval;
import wayside.sizing.ledger.RecordedWeather;
import wayside.sizing.ledger.Simulation;
import wayside.sizing.ledger.Weather;
import wayside.sizing.solar.SolarMonth;
import wayside.sizing.system.Chargers;
import wayside.sizing.system.Site;
import wayside.sizing.system.SiteStay;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Expression;
import wayside.sizing.trace.NamedOperation;
import wayside.sizing.trace.Input;
import wayside.sizing.trace.Source;
import wayside.sizing.trace.Unit;
import wayside.sizing.endurance.Endurance;
import wayside.sizing.ledger.Scenario;
import wayside.sizing.journey.WeatherSource;
import wayside.sizing.journey.SkyUncertainty;
import wayside.sizing.journey.Journey;

/**
 * A trip on which banks and arrays are tried, all in the same weathers. The bank counts as worn out: what is sized today must
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

    private final Site site;
    private final Journey model;
    private final Weather weather;
    private final RecordedWeather searched;
    private final int searchedRuns;
    private final Derived runs;
    private final Derived age;

    ChanceTrip(Site site) {
        this.site = site;
        model = model(site);
        long seed = site.brief().sampling().weatherSeed();
        Weather drawn = model.weather(seed, site.brief().system().panel());
        runs = runs(site, drawn.hours());
        int all = (int) runs.value();
        searched = RecordedWeather.of(drawn, all);
        weather = searched.runs() == all ? searched : drawn;
        int affordable = Math.max(FEWEST_SEARCHED, SEARCHED_HOURS / drawn.hours());
        searchedRuns = Math.min(searched.runs(), Math.min(SEARCH_RUNS, affordable));
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

    private static Journey model(Site site) {
        List<SolarMonth> months = site.stays().stream().map(SiteStay::month).toList();
        return new Journey(
                site.brief().trip(),
                months,
                site.stays().stream().map(SiteStay::budget).toList(),
                SkyUncertainty.of(site.brief().sampling(), months));
    }

    /**
     * All loads drawing so many times their power, through the inverter of the system, which stays as it is.
     *
     * @return the trip that takes so much
     */
    Journey drawing(double factor) {
        SystemWishes wishes = site.brief().system();
        EnergyBrief energy = new EnergyBrief(
                wishes.at(),
                site.brief().loads(),
                wishes.busVoltageV(),
                model.budgets().get(0).inverterAsItIs(wishes.inverter()),
                wishes.standbyW(),
                OptionalDouble.empty());
        return model.taking(energy.drawing(factor));
    }

    private List<LedgerDay> days(Journey lived, Chargers chargers, double moreDriving) {
        double alternatorW =
                chargers.alternator().map(a -> a.chargerPowerW().value()).orElse(0.0);
        double shoreW = chargers.shore().map(s -> s.chargerPowerW().value()).orElse(0.0);
        return lived.days(
                alternatorW,
                shoreW,
                stay -> WeatherSource.DRAWN.bankC(lived, stay, site.offsetK().value()),
                hours -> Math.min(24, hours + moreDriving),
                hours -> hours);
    }

    Site site() {
        return site;
    }

    Journey model() {
        return model;
    }

    Derived runs() {
        return runs;
    }

    /** Whether no stay has any sun. */
    boolean isDark() {
        return model.months().stream().allMatch(month -> month.yieldWhPerW().value() == 0);
    }

    /** All that the trip takes out of the bus [Wh]. */
    double wholeTripWh() {
        return model.days(0, 0, stay -> WeatherSource.DRAWN.bankC(model, stay, 0), hours -> hours, hours -> hours).stream()
                .mapToDouble(day -> day.nights()
                        * (day.essential().loadsWh()
                                + day.essential().inverterWh()
                                + day.essential().standbyWh()
                                + day.other().loadsWh()
                                + day.other().inverterWh()))
                .sum();
    }

    /** A pair with the chargers that go with such a bank. */
    Scenario scenario(double nominalWh, double solarW) {
        return scenario(model, chargers(nominalWh), nominalWh, solarW, 0);
    }

    /** A pair with other chargers, on a trip that takes something else or drives some hours more each day. */
    Scenario scenario(Journey lived, Chargers chargers, double nominalWh, double solarW, double moreDriving) {
        List<LedgerDay> days = days(lived, chargers, moreDriving);
        return new Scenario(days, site.chemistry(), nominalWh, age.value(), solarW, 1);
    }

    /** Those that go with a bank of a size [Wh]. */
    Chargers chargers(double nominalWh) {
        return Chargers.of(
                site,
                Derived.convention(
                        "rated energy tried", nominalWh, Unit.WATT_HOUR, "One of those tried", Source.definition()));
    }

    /** Share of the searched lives that run flat. */
    double searchedShare(Scenario scenario) {
        return (double) Simulation.flatRuns(scenario.ledger(), searched, searchedRuns) / searchedRuns;
    }

    /** Share of all lives that run flat. */
    double share(Scenario scenario) {
        return (double) flat(scenario) / (int) runs.value();
    }

    private int flat(Scenario scenario) {
        return Simulation.flatRuns(scenario.ledger(), weather, (int) runs.value());
    }

    /** The chance in all lives, traced. */
    Endurance.Chance chance(Scenario scenario, String whose, Derived nominalWh, Optional<Derived> solarW) {
        Derived chance = CHANCE.value(
                whose + "chance of running flat", share(scenario), Unit.SHARE, grounds(whose, nominalWh, solarW));
        ConfidenceInterval interval = ConfidenceInterval.of(chance, runs);
        return new Endurance.Chance(chance, interval.low(), interval.high());
    }

    private Input[] grounds(String whose, Derived nominalWh, Optional<Derived> solarW) {
        List<Input> inputs = new ArrayList<>(List.of(
                nominalWh.as("E"), age.as("a"), runs.as("N"), site.offsetK().as("dT")));
        Chargers chargers = Chargers.of(site, nominalWh, whose);
        chargers.alternator()
                .ifPresent(alternator -> inputs.add(alternator.chargerPowerW().as("P_alternator")));
        chargers.shore().ifPresent(shore -> inputs.add(shore.chargerPowerW().as("P_shore")));
        solarW.ifPresent(power -> inputs.add(power.as("P")));
        for (int i = 0; i < model.months().size(); i++) {
            inputs.add(model.budgets().get(i).dailyTotalWh().as("E_d"));
            inputs.add(model.months().get(i).yieldWhPerW().as("y"));
            inputs.add(model.months().get(i).sky().clearnessSpread().as("s"));
            inputs.add(model.uncertainty().ofMeans().get(i).as("u"));
        }
        inputs.add(model.uncertainty().ofSpread().as("v"));
        return inputs.toArray(Input[]::new);
    }
}
