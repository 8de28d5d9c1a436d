package wayside.sizing.endurance;

import java.util.OptionalInt;
import wayside.sizing.brief.BankRates;
import wayside.sizing.brief.BuiltSystem;
import wayside.sizing.brief.EnduranceBrief;
import wayside.sizing.charging.ChargerNeed;
import wayside.sizing.journey.Journey;
import wayside.sizing.journey.WeatherSource;
import wayside.sizing.ledger.BankBounds;
import wayside.sizing.ledger.Outcome;
import wayside.sizing.ledger.RecordedWeather;
import wayside.sizing.ledger.Scenario;
import wayside.sizing.ledger.Simulation;
import wayside.sizing.ledger.Weather;
import wayside.sizing.storage.BatteryBank;
import wayside.sizing.storage.ChemistryData;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Source;
import wayside.sizing.trace.Unit;

/**
 * The question in figures.
 *
 * @param charger what the bank takes and at which voltage
 * @param journey the trip made ready
 * @param weather of this trip on this panel
 */
public record EnduranceQuestion(
        EnduranceBrief brief,
        Journey journey,
        ChemistryData data,
        ChargerNeed charger,
        Derived solarW,
        Derived start,
        Derived runs,
        Weather weather) {
    private static final int RUNS = 2000;

    public static EnduranceQuestion of(EnduranceBrief brief, WeatherSource source) {
        BuiltSystem system = brief.system();
        Journey journey = Journey.of(brief, source);
        return new EnduranceQuestion(
                brief,
                journey,
                ChemistryData.of(system.chemistry()),
                charger(system, journey),
                Derived.byDefault(
                                "array: rated power",
                                0,
                                Unit.WATT,
                                system.at("solarPowerW"),
                                "No array was given",
                                Source.commonPractice())
                        .unlessGiven(system.solarPowerW()),
                Derived.byDefault(
                                "state of charge at the start",
                                1,
                                Unit.SHARE,
                                brief.at("initialStateOfCharge"),
                                "You leave with a full battery",
                                Source.commonPractice())
                        .unlessGiven(brief.initialStateOfCharge()),
                runs(brief),
                journey.weather());
    }

    private static ChargerNeed charger(BuiltSystem system, Journey journey) {
        ChemistryData data = ChemistryData.of(system.chemistry());
        Derived bus = journey.busVoltageV();
        Derived nominal = Derived.given(
                "rated energy of the bank", system.nominalEnergyWh(), Unit.WATT_HOUR, system.at("nominalEnergyWh"));
        Derived daily = journey.stays().get(0).budget().dailyTotalWh();
        return ChargerNeed.of("", data, nominal, BatteryBank.bankVoltage(data, bus), bus, daily, system.bankRates());
    }

    private static Derived runs(EnduranceBrief brief) {
        OptionalInt given = brief.sampling().runs();
        return Derived.byDefault(
                        "runs of the trip",
                        RUNS,
                        Unit.COUNT,
                        brief.sampling().at("runs"),
                        "Tells three in a hundred from two; more runs, narrower range",
                        Source.definition())
                .unlessGiven(given);
    }

    /** The weather in which changes are compared: of all runs of the trip, or of as many as are kept. */
    public RecordedWeather compared() {
        return RecordedWeather.of(weather, (int) runs.value());
    }

    /** The trip, simulated. */
    public Outcome outcome(RecordedWeather compared) {
        int all = (int) runs.value();
        return Simulation.simulate(
                scenario().ledger(), compared.runs() == all ? compared : weather, all, journey.loadHours());
    }

    /** How many runs go flat when age has left so much of the bank [share]. */
    int flatRuns(double ageShare) {
        return Simulation.flatRuns(scenario().aged(ageShare).ledger(), weather, (int) runs.value());
    }

    /** What age has left of the bank [share]. */
    Derived age() {
        BankRates rates = brief.system().bankRates();
        return Derived.byDefault(
                        "bank: what age has left of it",
                        1,
                        Unit.SHARE,
                        rates.at("healthShare"),
                        "As it was bought; batteries lose a fifth by the end of their life",
                        Source.commonPractice())
                .unlessGiven(rates.healthShare());
    }

    Scenario scenario() {
        return scenario(journey);
    }

    /** The same system on a changed trip. */
    Scenario scenario(Journey changed) {
        double alternatorW =
                brief.system().alternatorA() * charger.chargingVoltageV().value();
        return new Scenario(
                changed.days(alternatorW, brief.system().shoreW()),
                changed.heater(),
                data,
                charger.nominalEnergyWh().value(),
                age().value(),
                solarW.value(),
                start.value(),
                BankBounds.of(
                        brief.system().bankRates().maximumChargeA(),
                        charger.chargingVoltageV().value(),
                        brief.system().bankRates().maximumDischargeA(),
                        lowestV()));
    }

    private double lowestV() {
        return data.cellsInSeries(brief.system().busVoltageV()).value()
                * data.lowestCellVoltageV().value();
    }
}
