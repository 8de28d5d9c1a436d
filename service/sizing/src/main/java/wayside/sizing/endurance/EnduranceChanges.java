package wayside.sizing.endurance;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import wayside.sizing.brief.BankPlacement;
import wayside.sizing.brief.BuiltSystem;
import wayside.sizing.brief.Compartment;
import wayside.sizing.brief.EnergyBrief;
import wayside.sizing.brief.Load;
import wayside.sizing.brief.PanelMount;
import wayside.sizing.brief.Stay;
import wayside.sizing.demand.LoadDemand;
import wayside.sizing.journey.Journey;
import wayside.sizing.ledger.RecordedWeather;
import wayside.sizing.ledger.Scenario;
import wayside.sizing.ledger.Simulation;
import wayside.sizing.ledger.Weather;
import wayside.sizing.storage.MissingHeater;
import wayside.sizing.trace.ChangeCode;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Message;
import wayside.sizing.trace.Parameter;
import wayside.sizing.trace.Unit;

/** Tries one change after another in the same runs, and ranks them. */
final class EnduranceChanges {
    private static final double MORE_PANEL_W = 100;
    private static final double MORE_BANK = 0.5;
    private static final double LESS_LOAD = 0.2;
    private static final double TILT_DEGREES = 30;

    private final EnduranceQuestion question;
    private final RecordedWeather weather;
    private final Derived base;
    private final double coldHours;
    private final List<WhatHelps> changes = new ArrayList<>();

    private EnduranceChanges(EnduranceQuestion question, RecordedWeather weather, Derived base, double coldHours) {
        this.question = question;
        this.coldHours = coldHours;
        this.weather = weather;
        this.base = base;
    }

    /**
     * The changes that apply, the most helpful first.
     *
     * @param base chance without a change
     * @param coldHours in which the cold keeps charge out, without a change [h]
     */
    static List<WhatHelps> ranked(EnduranceQuestion question, RecordedWeather weather, Derived base, double coldHours) {
        EnduranceChanges all = new EnduranceChanges(question, weather, base, coldHours);
        all.equipment();
        all.warmth();
        all.loads();
        all.travel();
        return all.changes.stream()
                .sorted(Comparator.comparingDouble(c -> c.chanceOfRunningFlat().value()))
                .toList();
    }

    private void equipment() {
        Scenario plain = question.scenario();
        double solarW = question.solarW().value();
        add(
                Message.of(ChangeCode.MORE_PANEL, Parameter.number("power", MORE_PANEL_W, Unit.WATT)),
                plain.withSolar(solarW + MORE_PANEL_W),
                weather);
        add(
                Message.of(ChangeCode.MORE_BATTERY, Parameter.number("more", MORE_BANK, Unit.SHARE)),
                plain.withBank(plain.nominalWh() * (1 + MORE_BANK)),
                weather);
        boolean flat = question.journey()
                        .stays()
                        .get(0)
                        .month()
                        .array()
                        .position()
                        .tilt()
                        .value()
                == 0;
        if (solarW > 0 && flat) {
            PanelMount panel = question.brief().system().panel();
            PanelMount tilted = panel.tilted(TILT_DEGREES);
            add(
                    Message.of(ChangeCode.TILT_PANEL, Parameter.number("tilt", TILT_DEGREES, Unit.DEGREE)),
                    plain,
                    question.journey().weather(tilted)); // met once, so it is not recorded
        }
    }

    /** A lithium bank that frost keeps from being charged may stand in the cabin, or have a heater. */
    private void warmth() {
        Journey journey = question.journey();
        BankPlacement asked = journey.place().placement();
        if (coldHours > 0 && journey.place().compartment() != Compartment.CABIN) {
            add(
                    Message.of(ChangeCode.WARMER_BATTERY),
                    question.scenario(journey.in(asked.in(Compartment.CABIN))),
                    weather);
        }
        if (coldHours > 0 && asked.heater().isEmpty()) {
            journey.coldest().bank().missingHeater().ifPresent(this::heater);
        }
    }

    private void heater(MissingHeater heater) {
        add(
                Message.of(
                        ChangeCode.HEATED_BATTERY,
                        Parameter.number("power", heater.powerW()),
                        Parameter.number("energy", heater.dayWh())),
                question.scenario(question.journey().in(heater.placement())),
                weather);
    }

    private void loads() {
        EnergyBrief energy = question.journey().energyThroughTheInverter();
        int largest = largest();
        Load load = energy.loads().get(largest);
        add(
                Message.of(
                        ChangeCode.LESS_LOAD,
                        Parameter.number("less", LESS_LOAD, Unit.SHARE),
                        Parameter.text("load", load.name())),
                taking(energy.with(largest, load.drawing(1 - LESS_LOAD))),
                weather);
        inverterHours(energy)
                .ifPresent(hours -> add(
                        Message.of(ChangeCode.INVERTER_OFF, Parameter.number("hours", hours, Unit.HOUR)),
                        taking(energy.through(energy.inverter().onFor(hours))),
                        weather));
    }

    private int largest() {
        List<LoadDemand> demands =
                question.journey().stays().get(0).budget().demand().loads();
        int largest = 0;
        for (int i = 1; i < demands.size(); i++) {
            if (demands.get(i).dailyEnergyWh().value()
                    > demands.get(largest).dailyEnergyWh().value()) {
                largest = i;
            }
        }
        return largest;
    }

    /** Hours a day in which some AC load is on, in full tenths, when that is well below those the inverter is. */
    private static Optional<Double> inverterHours(EnergyBrief energy) {
        double used = energy.loads().stream()
                .filter(Load::isAc)
                .mapToDouble(Load::hoursOn)
                .sum();
        double told = Math.ceil(10 * used - 1e-9) / 10;
        double on = energy.inverter().hoursPerDay().orElse(Unit.HOURS_PER_DAY);
        return used > 0 && told < 0.75 * on ? Optional.of(told) : Optional.empty();
    }

    private void travel() {
        BuiltSystem system = question.brief().system();
        if (system.alternatorA() > 0 && hasAnHourMore(Stay::drivingHours)) {
            add(
                    Message.of(ChangeCode.MORE_DRIVING, Parameter.number("hours", 1, Unit.HOUR)),
                    travelling(1, 0),
                    weather);
        }
        if (system.shoreW() > 0 && hasAnHourMore(Stay::hookupHours)) {
            add(Message.of(ChangeCode.MORE_HOOKUP, Parameter.number("hours", 1, Unit.HOUR)), travelling(0, 1), weather);
        }
    }

    private Scenario taking(EnergyBrief energy) {
        return question.scenario(question.journey().taking(energy));
    }

    private Scenario travelling(double moreDriving, double moreHookup) {
        return question.scenario(question.journey().travelling(moreDriving, moreHookup));
    }

    private boolean hasAnHourMore(ToDoubleFunction<Stay> hours) {
        return question.brief().trip().stays().stream()
                .mapToDouble(hours)
                .anyMatch(each -> each + 1 <= Unit.HOURS_PER_DAY);
    }

    private void add(Message change, Scenario scenario, Weather sun) {
        int flat = Simulation.flatRuns(scenario.ledger(), sun, weather.runs());
        changes.add(new WhatHelps(
                change,
                LedgerSteps.share(
                        "chance of running flat with the change "
                                + change.code().code(),
                        flat,
                        weather.runs(),
                        base),
                base));
    }
}
