package wayside.sizing.chance;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import wayside.sizing.endurance.Habit;
import wayside.sizing.endurance.Habits;
import wayside.sizing.endurance.SparedChance;
import wayside.sizing.endurance.WhatHelps;
import wayside.sizing.ledger.Scenario;
import wayside.sizing.system.Chargers;
import wayside.sizing.trace.ChangeCode;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Message;
import wayside.sizing.trace.NamedOperation;
import wayside.sizing.trace.Parameter;
import wayside.sizing.trace.Source;
import wayside.sizing.trace.Unit;

/**
 * Tries one change after another to the system that was found and keeps those that help by more than luck: habits, which cost
 * nothing, first, then parts in steps that can be bought, each kind by what it spares.
 */
final class ChanceChanges {
    private static final NamedOperation CHANGED = NamedOperation.of(
            NamedOperation.Kind.SIMULATION,
            "share of the same runs that run flat with this one change; p0 without it",
            Source.definition());
    private static final NamedOperation STEP = NamedOperation.of(
            NamedOperation.Kind.NEXT_SIZE,
            "mass of bank, array and chargers with the next larger part that exists, less theirs without it",
            Source.commonPractice());

    private final ChanceTrip trip;
    private final ChanceCurve curve;
    private final ChancePair pair;
    private final Borne borne;
    private final boolean[] without;
    private final List<WhatHelps> habits = new ArrayList<>();
    private final List<WhatHelps> parts = new ArrayList<>();

    private ChanceChanges(ChanceTrip trip, ChanceCurve curve, ChancePair pair, Borne borne) {
        this.trip = trip;
        this.curve = curve;
        this.pair = pair;
        this.borne = borne;
        without = trip.whichGoFlat(trip.scenario(pair));
    }

    /** Those that help. */
    static List<WhatHelps> ranked(ChanceTrip trip, ChanceCurve curve, ChancePair pair, Borne borne) {
        ChanceChanges all = new ChanceChanges(trip, curve, pair, borne);
        if (borne.chance().value().value() == 0) {
            return List.of();
        }
        all.habits();
        all.parts();
        all.habits.sort(Comparator.comparingDouble(c -> c.chanceOfRunningFlat().value()));
        all.parts.sort(Comparator.comparingDouble(c -> -c.spared().value().value()
                / Math.max(0.1, c.addedKg().map(Derived::value).orElse(0.0))));
        List<WhatHelps> ranked = new ArrayList<>(all.habits);
        ranked.addAll(all.parts);
        return ranked.stream().filter(WhatHelps::helps).toList();
    }

    private void habits() {
        Chargers chargers = trip.chargers(pair);
        Habits.of(
                        trip.journey(),
                        borne.coldHours().value(),
                        pair.arrayW() > 0,
                        chargers.alternator().isPresent(),
                        chargers.shore().isPresent())
                .forEach(habit -> habits.add(change(habit.change(), flat(habit, chargers), Optional.empty())));
    }

    private boolean[] flat(Habit habit, Chargers chargers) {
        Scenario scenario = trip.scenario(habit.journey(), chargers, pair.bankWh(), pair.arrayW());
        return habit.panel()
                .map(panel -> trip.whichGoFlat(scenario, trip.journey().weather(panel)))
                .orElseGet(() -> trip.whichGoFlat(scenario));
    }

    private void parts() {
        curve.grown(pair)
                .ifPresent(larger -> part(
                        Message.of(
                                ChangeCode.MORE_BATTERY,
                                Parameter.number("more", larger.bankWh() / pair.bankWh() - 1, Unit.SHARE)),
                        larger));
        curve.widened(pair)
                .ifPresent(larger -> part(
                        Message.of(
                                ChangeCode.MORE_PANEL,
                                Parameter.number("power", larger.arrayW() - pair.arrayW(), Unit.WATT)),
                        larger));
        curve.strengthened(pair).ifPresent(this::charger);
    }

    /** Unless the bank takes no more. */
    private void charger(ChancePair larger) {
        double outputA = outputA(larger);
        if (outputA > outputA(pair)) {
            part(Message.of(ChangeCode.STRONGER_CHARGER, Parameter.number("current", outputA, Unit.AMPERE)), larger);
        }
    }

    private double outputA(ChancePair one) {
        return trip.chargers(one)
                .alternator()
                .map(charger -> charger.chargerCurrentA().value())
                .orElse(0.0);
    }

    /** A part is added and all others stay as they are. */
    private void part(Message change, ChancePair larger) {
        Chargers chargers = trip.chargers(larger.engineA().equals(pair.engineA()) ? pair : larger);
        Scenario scenario = trip.scenario(trip.journey(), chargers, larger.bankWh(), larger.arrayW());
        double kg = ChancePick.massKg(trip, larger, chargers) - ChancePick.massKg(trip, pair, trip.chargers(pair));
        Derived added = STEP.value(
                "mass that " + change.code().code() + " adds",
                kg,
                Unit.KILOGRAM,
                borne.chance().value().as("p0"));
        parts.add(change(change, trip.whichGoFlat(scenario), Optional.of(added)));
    }

    private WhatHelps change(Message change, boolean[] with, Optional<Derived> addedKg) {
        int flat = 0;
        for (boolean one : with) {
            flat += one ? 1 : 0;
        }
        Derived base = borne.chance().value();
        String code = change.code().code();
        return new WhatHelps(
                change,
                CHANGED.value(
                        "chance of running flat with the change " + code,
                        (double) flat / with.length,
                        Unit.SHARE,
                        base.as("p0")),
                base,
                SparedChance.of(code, without, with, trip.runs()),
                addedKg);
    }
}
