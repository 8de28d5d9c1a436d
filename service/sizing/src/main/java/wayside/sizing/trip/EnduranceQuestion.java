package wayside.sizing.trip;

import java.util.Arrays;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import wayside.sizing.brief.BuiltSystem;
import wayside.sizing.brief.EnduranceBrief;
import wayside.sizing.brief.EnergyBrief;
import wayside.sizing.brief.InverterSpec;
import wayside.sizing.charging.ChargerNeed;
import wayside.sizing.endurance.Outcome;
import wayside.sizing.endurance.RecordedWeather;
import wayside.sizing.endurance.Simulation;
import wayside.sizing.endurance.Weather;
import wayside.sizing.storage.BankPlace;
import wayside.sizing.storage.BatteryBank;
import wayside.sizing.storage.ChemistryData;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Source;
import wayside.sizing.trace.Unit;

/**
 * The question in figures.
 *
 * @param charger what the bank takes and at which voltage
 * @param skies that make the weather of any such trip on any panel
 * @param weather of this trip on this panel
 */
public record EnduranceQuestion(
        EnduranceBrief brief,
        TripModel model,
        ChemistryData data,
        ChargerNeed charger,
        Derived solarW,
        Derived start,
        Derived offsetK,
        Derived runs,
        Skies skies,
        Weather weather) {
    private static final int RUNS = 2000;

    public static EnduranceQuestion of(EnduranceBrief brief, Skies skies) {
        BuiltSystem system = brief.system();
        TripModel model =
                TripModel.of(brief.trip(), energy(brief, system.inverter()), system.panel(), brief.sampling());
        return new EnduranceQuestion(
                brief,
                model,
                ChemistryData.of(system.chemistry()),
                charger(system, model),
                Derived.given("array: rated power", system.solarPowerW(), Unit.WATT, TripModel.SYSTEM + "/solarPowerW"),
                Derived.assumed(
                                "state of charge at the start",
                                1,
                                Unit.SHARE,
                                "/initialStateOfCharge",
                                "You leave with a full battery",
                                Source.commonPractice())
                        .unlessGiven(brief.initialStateOfCharge()),
                BankPlace.offsetK(brief.compartmentOffsetC()),
                runs(brief),
                skies,
                skies.over(model, system.panel(), brief.sampling().seed()));
    }

    private static EnergyBrief energy(EnduranceBrief brief, InverterSpec inverter) {
        BuiltSystem system = brief.system();
        return new EnergyBrief(
                brief.loads(),
                OptionalDouble.of(system.busVoltageV()),
                inverter,
                system.standbyW(),
                OptionalDouble.empty());
    }

    /** What a day takes, the inverter being the one that stands in the vehicle: it does not change with the loads. */
    EnergyBrief energy() {
        return energy(
                brief, model.budgets().get(0).inverterAsItIs(brief.system().inverter()));
    }

    private static ChargerNeed charger(BuiltSystem system, TripModel model) {
        ChemistryData data = ChemistryData.of(system.chemistry());
        Derived bus = Derived.given(
                "nominal bus voltage", system.busVoltageV(), Unit.VOLT, TripModel.SYSTEM + "/busVoltageV");
        Derived nominal = Derived.given(
                "rated energy of the bank",
                system.nominalEnergyWh(),
                Unit.WATT_HOUR,
                TripModel.SYSTEM + "/nominalEnergyWh");
        Derived daily = model.budgets().get(0).dailyTotalWh();
        return ChargerNeed.of(data, nominal, BatteryBank.bankVoltage(data, bus), bus, daily);
    }

    private static Derived runs(EnduranceBrief brief) {
        OptionalInt given = brief.sampling().runs();
        return Derived.assumed(
                        "trips lived",
                        RUNS,
                        Unit.COUNT,
                        "/runs",
                        "Tells three in a hundred from two; more runs, narrower range",
                        Source.definition())
                .unlessGiven(given);
    }

    /** The weather in which changes are compared: of all runs of the trip, or of as many as are kept. */
    public RecordedWeather compared() {
        return RecordedWeather.of(weather, (int) runs.value());
    }

    /** The trip, lived. */
    public Outcome outcome(RecordedWeather compared) {
        int all = (int) runs.value();
        return Simulation.simulate(scenario().ledger(), compared.runs() == all ? compared : weather, all);
    }

    Scenario scenario() {
        return travelling(0, 0);
    }

    /** The same system on the same trip, whose day takes something else. */
    Scenario taking(EnergyBrief energy) {
        return scenario(model.taking(energy), offsetK.value(), 0, 0);
    }

    /** Some more hours of driving and at a hookup each day. */
    Scenario travelling(double moreDriving, double moreHookup) {
        return scenario(model, offsetK.value(), moreDriving, moreHookup);
    }

    /** The coldest hour that the bank may meet [C]. */
    double coldestBankC() {
        double coldest = Double.POSITIVE_INFINITY;
        for (int stay = 0; stay < model.months().size(); stay++) {
            for (double[] day : skies.bankC(model, stay, offsetK.value())) {
                coldest = Math.min(coldest, Arrays.stream(day).min().orElseThrow());
            }
        }
        return coldest;
    }

    /** The bank standing so much warmer still [K]. */
    Scenario warmerScenario(double moreK) {
        return scenario(model, offsetK.value() + moreK, 0, 0);
    }

    private Scenario scenario(TripModel trip, double warmerK, double moreDriving, double moreHookup) {
        double alternatorW =
                brief.system().alternatorChargerA() * charger.chargingVoltageV().value();
        return new Scenario(
                trip.days(
                        alternatorW,
                        brief.system().shoreChargerW(),
                        stay -> skies.bankC(trip, stay, warmerK),
                        hours -> Math.min(24, hours + moreDriving),
                        hours -> Math.min(24, hours + moreHookup)),
                data,
                charger.nominalEnergyWh().value(),
                1,
                solarW.value(),
                start.value());
    }
}
