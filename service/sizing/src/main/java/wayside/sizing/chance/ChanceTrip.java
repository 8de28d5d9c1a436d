package wayside.sizing.chance;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import wayside.sizing.brief.BankRates;
import wayside.sizing.brief.Objective;
import wayside.sizing.chance.ChancePair.ArrayTried;
import wayside.sizing.chance.ChancePair.BankTried;
import wayside.sizing.endurance.EnergyBalance;
import wayside.sizing.endurance.Served;
import wayside.sizing.endurance.VitalReserve;
import wayside.sizing.journey.HookupNights;
import wayside.sizing.journey.Journey;
import wayside.sizing.ledger.BankBounds;
import wayside.sizing.ledger.LaterRuns;
import wayside.sizing.ledger.LedgerDay;
import wayside.sizing.ledger.LoadHours;
import wayside.sizing.ledger.Outcome;
import wayside.sizing.ledger.RecordedWeather;
import wayside.sizing.ledger.Scenario;
import wayside.sizing.ledger.Simulation;
import wayside.sizing.ledger.Weather;
import wayside.sizing.storage.ChemistryData;
import wayside.sizing.system.BankChoice;
import wayside.sizing.system.Chargers;
import wayside.sizing.system.Site;
import wayside.sizing.system.SizePair;
import wayside.sizing.system.SizedSystem;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Expression;
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
    private static final double ROUNDING = 1e-9;
    /** Simulated hours of one trial in the search, and of the confirmation: they bound the time of an answer. */
    private static final int SEARCHED_HOURS = 400_000;

    private static final int MOST_HOURS = 4_000_000;
    private static final Expression CONFIRMED = Expression.definition("N = min(n, n_max)");

    private final Site site;
    private final Journey journey;
    private final Optional<HookupNights> hookups;
    private final Weather weather;
    private final RecordedWeather searched;
    private final int searchedRuns;
    private final Derived runs;
    private final Derived age;
    private final List<OptionalDouble> enginesA;
    private final double leastBankWh;
    private final double leastArrayW;

    ChanceTrip(Site site) {
        this.site = site;
        journey = site.journey();
        hookups = Optional.empty();
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
        age = age(site);
        enginesA = enginesA(site);
        Optional<SizedSystem> byDays = site.brief().target().autonomyDays().isPresent()
                ? Optional.of(SizedSystem.of(site, SizePair.OPEN))
                : Optional.empty();
        leastBankWh = byDays.map(days -> days.battery().neededWh().value()).orElse(0.0);
        leastArrayW =
                byDays.map(days -> days.arrayNeed().worst().arrayW().value()).orElse(0.0);
    }

    /** The same skies over a changed trip. */
    private ChanceTrip(ChanceTrip other, Site site, Journey journey, Optional<HookupNights> hookups) {
        this.site = site;
        this.journey = journey;
        this.hookups = hookups;
        weather = other.weather;
        searched = other.searched;
        searchedRuns = other.searchedRuns;
        runs = other.runs;
        age = other.age;
        enginesA = enginesA(site);
        leastBankWh = other.leastBankWh;
        leastArrayW = other.leastArrayW;
    }

    /** A changed trip in the same weather. */
    ChanceTrip on(Journey changed) {
        return new ChanceTrip(this, site.on(changed), changed, Optional.empty());
    }

    /** The same trip with nights at a hookup. */
    ChanceTrip at(HookupNights nights) {
        return new ChanceTrip(this, site.on(nights.pluggedIn()), nights.plain(), Optional.of(nights));
    }

    /** Where bank and panel are chosen by what they cost, the charger has no price, and stays the usual one. */
    private static List<OptionalDouble> enginesA(Site site) {
        List<OptionalDouble> outputs = ChancePick.objective(site.brief().target()) == Objective.PRICE
                ? List.of()
                : Chargers.engineOutputsA(site).stream().map(OptionalDouble::of).toList();
        return outputs.isEmpty() ? List.of(OptionalDouble.empty()) : outputs;
    }

    /** A bank counts as worn out unless the brief says how much is left of it. */
    private static Derived age(Site site) {
        BankRates rates = site.brief().system().bankRates();
        return rates.healthShare().isPresent()
                ? Derived.given(
                        "bank: what age has left of it",
                        rates.healthShare().getAsDouble(),
                        Unit.SHARE,
                        rates.at("healthShare"))
                : site.chemistry().endOfLifeShare();
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

    /** What age has left of the bank [share]. */
    Derived age() {
        return age;
    }

    /** Whether no stay has any sun. */
    boolean isDark() {
        return journey.stays().stream()
                .allMatch(stay -> stay.month().yieldWhPerW().value() == 0);
    }

    /** Whether engine or hookup charge the bank on the way. */
    boolean isChargedWithoutSun() {
        // Any bank will do that is one: whether a charger is there does not hang on its size.
        BankTried least = BankTried.given(1000 + BankChoice.leastWh(site).value());
        Chargers weakest = chargers(ChancePair.of(least, ArrayTried.NONE, enginesA.get(0)));
        return weakest.alternator().isPresent() || weakest.shore().isPresent();
    }

    /** Outputs of a charger on the engine that are to be tried, by rising output [A]; one open entry where none is. */
    List<OptionalDouble> enginesA() {
        return enginesA;
    }

    /** Of the bank, where days of autonomy are asked for too [Wh]; else 0. */
    double leastBankWh() {
        return leastBankWh;
    }

    /** Of the array, likewise [W]. */
    double leastArrayW() {
        return leastArrayW;
    }

    /** A pair on the trip. */
    Scenario scenario(ChancePair pair) {
        Chargers chargers = chargers(pair);
        double alternatorW = alternatorW(chargers);
        double shoreW = shoreW(chargers);
        List<LedgerDay> days = hookups.map(nights -> nights.days(alternatorW, shoreW))
                .orElseGet(() -> journey.days(alternatorW, shoreW));
        return scenario(days, journey, chargers, pair.bankWh(), pair.arrayW());
    }

    /** A pair with other chargers, or on a changed trip. */
    Scenario scenario(Journey changed, Chargers chargers, double nominalWh, double solarW) {
        List<LedgerDay> days = changed.days(alternatorW(chargers), shoreW(chargers));
        return scenario(days, changed, chargers, nominalWh, solarW);
    }

    private Scenario scenario(List<LedgerDay> days, Journey on, Chargers chargers, double nominalWh, double solarW) {
        return new Scenario(days, on.heater(), site.chemistry(), nominalWh, age.value(), solarW, 1, bounds(chargers));
    }

    private static double alternatorW(Chargers chargers) {
        return chargers.alternator().map(a -> a.chargerPowerW().value()).orElse(0.0);
    }

    private static double shoreW(Chargers chargers) {
        return chargers.shore().map(s -> s.chargerPowerW().value()).orElse(0.0);
    }

    private BankBounds bounds(Chargers chargers) {
        BankRates rates = site.brief().system().bankRates();
        ChemistryData data = site.chemistry();
        double lowestV = data.cellsInSeries(site.busVoltageV().value()).value()
                * data.lowestCellVoltageV().value();
        return BankBounds.of(
                rates.maximumChargeA(), chargers.need().chargingVoltageV().value(), rates.maximumDischargeA(), lowestV);
    }

    /** Those that go with a pair. */
    Chargers chargers(ChancePair pair) {
        Optional<Derived> engineA = pair.engineA().isPresent()
                ? Optional.of(tried("output tried", pair.engineA().getAsDouble(), Unit.AMPERE))
                : Optional.empty();
        return Chargers.of(site, tried("rated energy tried", pair.bankWh(), Unit.WATT_HOUR), "", engineA);
    }

    private static Derived tried(String label, double value, Unit unit) {
        return Derived.convention(label, value, unit, "One of those tried", Source.definition());
    }

    /** Whether a pair meets what is asked in the searched runs. */
    boolean isSure(Scenario scenario, ChanceDemands demands) {
        return meets(scenario, demands, searched, searchedRuns);
    }

    /** Whether it does in all runs of the trip, which are others. */
    boolean isBorne(Scenario scenario, ChanceDemands demands) {
        return meets(scenario, demands, weather, (int) runs.value());
    }

    private boolean meets(Scenario scenario, ChanceDemands demands, Weather met, int inRuns) {
        int most = (int) Math.floor(demands.mostFlat() * inRuns + ROUNDING);
        if (!Simulation.flatAtMost(scenario.ledger(), met, inRuns, most)) {
            return false;
        }
        if (!demands.asksMore()) {
            return true;
        }
        Outcome outcome = Simulation.untracked(scenario.ledger(), met, inRuns, loadHours());
        boolean comfortable = demands.comfortShare()
                .map(wanted -> Served.comfortShare(journey, outcome) >= wanted.value())
                .orElse(true);
        return comfortable && !(demands.mustBalance() && EnergyBalance.isNegative(journey, outcome));
    }

    private List<List<LoadHours>> loadHours() {
        return hookups.map(HookupNights::loadHours).orElseGet(journey::loadHours);
    }

    /** Which of all runs run flat. */
    boolean[] whichGoFlat(Scenario scenario) {
        return whichGoFlat(scenario, weather);
    }

    /** The same under other skies. */
    boolean[] whichGoFlat(Scenario scenario, Weather met) {
        return Simulation.whichGoFlat(scenario.ledger(), met, (int) runs.value());
    }

    /** Share of all runs that run flat. */
    double share(Scenario scenario) {
        return (double) Simulation.flatRuns(scenario.ledger(), weather, (int) runs.value()) / (int) runs.value();
    }

    /** What all runs say of a pair, the bank aged. */
    Borne borne(ChancePair tried, SizePair pair) {
        Outcome outcome = Simulation.untracked(scenario(tried).ledger(), weather, (int) runs.value(), loadHours());
        ChanceSteps steps = new ChanceSteps(this, "", pair);
        Derived nominalWh = pair.nominalEnergyWh().orElseThrow();
        return new Borne(
                steps.chance(outcome.chance()),
                steps.step(
                        "chance of running flat when the bank is new",
                        share(scenario(tried).aged(1)),
                        Unit.SHARE,
                        "share of the N runs in which an essential load goes short in some hour, the bank as it was bought"),
                steps.step(
                        "hours in which the cold kept charge out",
                        outcome.coldHours(),
                        Unit.HOUR,
                        "mean of the N runs of the hours in which charge is on offer and the bank is too cold for it"),
                Served.of(journey, outcome, steps),
                EnergyBalance.of(journey, outcome, site.chemistry(), nominalWh, age, steps),
                VitalReserve.find(journey, outcome, site.chemistry(), nominalWh, age, steps));
    }
}
