package wayside.sizing.chance;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import wayside.sizing.endurance.WhatHelps;
import wayside.sizing.journey.Journey;
import wayside.sizing.ledger.Scenario;
import wayside.sizing.system.Chargers;
import wayside.sizing.trace.ChangeCode;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Message;
import wayside.sizing.trace.NamedOperation;
import wayside.sizing.trace.Parameter;
import wayside.sizing.trace.Source;
import wayside.sizing.trace.Unit;

/** Tries one change after another to the system that was found, whose chargers and inverter stay as they are, and ranks them. */
final class ChanceChanges {
    private static final NamedOperation CHANGED = NamedOperation.of(
            NamedOperation.Kind.SIMULATION,
            "share of the same runs that run flat with this one change; p0 without it",
            Source.definition());

    private static final double MORE_PANEL_W = 100;
    private static final double MORE_BANK = 0.5;
    private static final double LESS_LOAD = 0.2;

    private final ChanceTrip trip;
    private final Chargers chargers;
    private final ChancePair pair;
    private final Derived base;
    private final List<WhatHelps> changes = new ArrayList<>();

    private ChanceChanges(ChanceTrip trip, ChancePair pair, Derived base) {
        this.trip = trip;
        this.pair = pair;
        this.base = base;
        chargers = trip.chargers(pair);
    }

    /**
     * The changes that apply, the most helpful first.
     *
     * @param base chance of the system that was found
     */
    static List<WhatHelps> ranked(ChanceTrip trip, ChancePair pair, Derived base) {
        ChanceChanges all = new ChanceChanges(trip, pair, base);
        all.collect();
        return all.changes.stream()
                .sorted(Comparator.comparingDouble(c -> c.chanceOfRunningFlat().value()))
                .toList();
    }

    private void collect() {
        Journey asked = trip.journey();
        double bankWh = pair.bankWh();
        double solarW = pair.arrayW();
        Journey lighter = asked.taking(asked.energyThroughTheInverter().drawing(1 - LESS_LOAD));
        add(
                Message.of(ChangeCode.MORE_PANEL, Parameter.number("power", MORE_PANEL_W, Unit.WATT)),
                scenario(asked, bankWh, solarW + MORE_PANEL_W));
        add(
                Message.of(ChangeCode.MORE_BATTERY, Parameter.number("more", MORE_BANK, Unit.SHARE)),
                scenario(asked, bankWh * (1 + MORE_BANK), solarW));
        add(
                Message.of(ChangeCode.LESS_OF_EVERYTHING, Parameter.number("less", LESS_LOAD, Unit.SHARE)),
                scenario(lighter, bankWh, solarW));
        boolean anHour =
                asked.stays().stream().anyMatch(stay -> stay.drivingHours().value() + 1 <= Unit.HOURS_PER_DAY);
        if (chargers.alternator().isPresent() && anHour) {
            add(
                    Message.of(ChangeCode.MORE_DRIVING, Parameter.number("hours", 1, Unit.HOUR)),
                    scenario(asked.travelling(1, 0), bankWh, solarW));
        }
    }

    private Scenario scenario(Journey changed, double nominalWh, double arrayW) {
        return trip.scenario(changed, chargers, nominalWh, arrayW);
    }

    private void add(Message change, Scenario scenario) {
        Derived chance = CHANGED.value(
                "chance of running flat with the change " + change.code().code(),
                trip.share(scenario),
                Unit.SHARE,
                base.as("p0"));
        changes.add(new WhatHelps(change, chance, base));
    }
}
