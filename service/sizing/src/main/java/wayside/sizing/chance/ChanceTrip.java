package wayside.sizing.chance;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import wayside.sizing.brief.EnergyBrief;
import wayside.sizing.brief.PanelMount;
import wayside.sizing.brief.SystemWishes;
import wayside.sizing.endurance.LedgerDay;
import wayside.sizing.endurance.Proportion;
import wayside.sizing.endurance.RecordedWeather;
import wayside.sizing.endurance.Simulation;
import wayside.sizing.endurance.Weather;
import wayside.sizing.solar.SolarMonth;
import wayside.sizing.system.Chargers;
import wayside.sizing.system.Site;
import wayside.sizing.system.SiteStay;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Formula;
import wayside.sizing.trace.Input;
import wayside.sizing.trace.Source;
import wayside.sizing.trace.Unit;
import wayside.sizing.trip.Endurance;
import wayside.sizing.trip.Scenario;
import wayside.sizing.trip.Skies;
import wayside.sizing.trip.SkyUncertainty;
import wayside.sizing.trip.TripModel;

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

    private final Site site;
    private final TripModel model;
    private final Weather weather;
    private final RecordedWeather searched;
    private final int searchedRuns;
    private final Derived runs;
    private final Derived age;

    ChanceTrip(Site site) {
        this.site = site;
        model = model(site);
        long seed = site.brief().sampling().seed();
        Weather drawn = model.weather(seed, site.brief().system().panel().orElse(PanelMount.OPEN));
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
        Derived wanted = Derived.assumed(
                        "trips to be lived",
                        RUNS,
                        Unit.COUNT,
                        "/runs",
                        "Tells three in a hundred from two",
                        Source.definition())
                .unlessGiven(given);
        return Derived.computed(
                "trips lived",
                Math.min(wanted.value(), Math.max(FEWEST_SEARCHED, MOST_HOURS / hours)),
                Unit.COUNT,
                Formula.definition("N = smaller of n and what 4 million simulated hours allow"),
                wanted.as("n"));
    }

    private static TripModel model(Site site) {
        List<SolarMonth> months = site.stays().stream().map(SiteStay::month).toList();
        return new TripModel(
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
    TripModel drawing(double factor) {
        SystemWishes wishes = site.brief().system();
        EnergyBrief energy = new EnergyBrief(
                site.brief().loads(),
                wishes.busVoltageV(),
                model.budgets().get(0).inverterAsItIs(wishes.inverter()),
                wishes.standbyW(),
                OptionalDouble.empty());
        return model.taking(energy.drawing(factor));
    }

    private List<LedgerDay> days(TripModel lived, Chargers chargers, double moreDriving) {
        double alternatorW =
                chargers.alternator().map(a -> a.chargerPowerW().value()).orElse(0.0);
        double shoreW = chargers.shore().map(s -> s.chargerPowerW().value()).orElse(0.0);
        return lived.days(
                alternatorW,
                shoreW,
                stay -> Skies.DRAWN.bankC(lived, stay, site.offsetK().value()),
                hours -> Math.min(24, hours + moreDriving),
                hours -> hours);
    }

    Site site() {
        return site;
    }

    TripModel model() {
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
        return model.days(0, 0, stay -> Skies.DRAWN.bankC(model, stay, 0), hours -> hours, hours -> hours).stream()
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
    Scenario scenario(TripModel lived, Chargers chargers, double nominalWh, double solarW, double moreDriving) {
        List<LedgerDay> days = days(lived, chargers, moreDriving);
        return new Scenario(days, site.chemistry(), nominalWh, age.value(), solarW, 1);
    }

    /** Those that go with a bank of a size [Wh]. */
    Chargers chargers(double nominalWh) {
        return Chargers.of(
                site,
                Derived.computed(
                        "rated energy tried", nominalWh, Unit.WATT_HOUR, Formula.definition("by halving the range")));
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
    Endurance.Chance chance(Scenario scenario, String label, Derived nominalWh, Optional<Derived> solarW) {
        Proportion chance = Proportion.of(flat(scenario), (int) runs.value());
        Input[] grounds = grounds(nominalWh, solarW);
        String text =
                "p = n_flat / N: lives of the trip in which an essential load goes short, the bank aged to a share a";
        String range = "Wilson's range of 95 % for p = n_flat / N";
        return new Endurance.Chance(
                Derived.computed(label, chance.value(), Unit.SHARE, new Formula(text, METHOD), grounds),
                Derived.computed(label + ", low end", chance.low(), Unit.SHARE, new Formula(range, METHOD), grounds),
                Derived.computed(label + ", high end", chance.high(), Unit.SHARE, new Formula(range, METHOD), grounds));
    }

    private Input[] grounds(Derived nominalWh, Optional<Derived> solarW) {
        List<Input> inputs = new ArrayList<>(List.of(
                nominalWh.as("E"), age.as("a"), runs.as("N"), site.offsetK().as("dT")));
        Chargers chargers = Chargers.of(site, nominalWh);
        chargers.alternator()
                .ifPresent(alternator -> inputs.add(alternator.chargerPowerW().as("P_alternator")));
        chargers.shore().ifPresent(shore -> inputs.add(shore.chargerPowerW().as("P_shore")));
        solarW.ifPresent(power -> inputs.add(power.as("P")));
        for (int i = 0; i < model.months().size(); i++) {
            String n = Integer.toString(i + 1);
            inputs.add(model.budgets().get(i).dailyTotalWh().as("E_d" + n));
            inputs.add(model.months().get(i).yieldWhPerW().as("y" + n));
            inputs.add(model.months().get(i).sky().clearnessSpread().as("s" + n));
            inputs.add(model.uncertainty().ofMeans().get(i).as("u" + n));
        }
        inputs.add(model.uncertainty().ofSpread().as("v"));
        return inputs.toArray(Input[]::new);
    }
}
