package wayside.sizing.endurance;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import wayside.sizing.brief.BuiltSystem;
import wayside.sizing.ledger.RecordedWeather;
import wayside.sizing.ledger.Scenario;
import wayside.sizing.ledger.Simulation;
import wayside.sizing.ledger.Weather;
import wayside.sizing.trace.ChangeCode;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Message;
import wayside.sizing.trace.Parameter;
import wayside.sizing.trace.Unit;

/** Tries one change after another in the same runs, and ranks them. */
final class EnduranceChanges {
    private static final double MORE_PANEL_W = 100;
    private static final double MORE_BANK = 0.5;

    private final EnduranceQuestion question;
    private final RecordedWeather weather;
    private final Derived base;
    private final Derived runs;
    private final boolean[] without;
    private final List<WhatHelps> changes = new ArrayList<>();

    private EnduranceChanges(EnduranceQuestion question, RecordedWeather weather, Derived base, Derived runs) {
        this.question = question;
        this.weather = weather;
        this.base = base;
        this.runs = runs;
        without = flat(question.scenario(), weather);
    }

    /**
     * The changes that apply, the most helpful first.
     *
     * @param base chance without a change
     * @param runs in which they are compared
     * @param coldHours in which the cold keeps charge out, without a change [h]
     */
    static List<WhatHelps> ranked(
            EnduranceQuestion question, RecordedWeather weather, Derived base, Derived runs, double coldHours) {
        EnduranceChanges all = new EnduranceChanges(question, weather, base, runs);
        all.parts();
        BuiltSystem system = question.brief().system();
        Habits.of(
                        question.journey(),
                        coldHours,
                        question.solarW().value() > 0,
                        system.alternatorA() > 0,
                        system.shoreW() > 0)
                .forEach(all::habit);
        return all.changes.stream()
                .sorted(Comparator.comparingDouble(c -> c.chanceOfRunningFlat().value()))
                .toList();
    }

    private void parts() {
        Scenario plain = question.scenario();
        add(
                Message.of(ChangeCode.MORE_PANEL, Parameter.number("power", MORE_PANEL_W, Unit.WATT)),
                plain.withSolar(question.solarW().value() + MORE_PANEL_W),
                weather);
        add(
                Message.of(ChangeCode.MORE_BATTERY, Parameter.number("more", MORE_BANK, Unit.SHARE)),
                plain.withBank(plain.nominalWh() * (1 + MORE_BANK)),
                weather);
    }

    private void habit(Habit habit) {
        // A tilted panel's weather is met once, so it is not recorded.
        Weather met = habit.panel().map(question.journey()::weather).orElse(weather);
        add(habit.change(), question.scenario(habit.journey()), met);
    }

    private boolean[] flat(Scenario scenario, Weather met) {
        return Simulation.whichGoFlat(scenario.ledger(), met, weather.runs());
    }

    private void add(Message change, Scenario scenario, Weather met) {
        boolean[] with = flat(scenario, met);
        String code = change.code().code();
        changes.add(new WhatHelps(
                change,
                LedgerSteps.share("chance of running flat with the change " + code, count(with), weather.runs(), base),
                base,
                SparedChance.of(code, without, with, runs),
                Optional.empty()));
    }

    private static int count(boolean[] flat) {
        int count = 0;
        for (boolean one : flat) {
            count += one ? 1 : 0;
        }
        return count;
    }
}
