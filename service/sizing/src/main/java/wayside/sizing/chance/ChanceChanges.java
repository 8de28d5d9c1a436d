package wayside.sizing.chance;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import wayside.sizing.system.Chargers;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Formula;
import wayside.sizing.trace.Unit;
import wayside.sizing.trip.Scenario;
import wayside.sizing.trip.TripModel;
import wayside.sizing.trip.WhatHelps;

/** Tries one change after another to the system that was found, whose chargers and inverter stay as they are, and ranks them. */
final class ChanceChanges {
    private static final double MORE_PANEL_W = 100;
    private static final double MORE_BANK = 1.5;
    private static final double LESS_LOAD = 0.8;

    private final ChanceTrip trip;
    private final Chargers chargers;
    private final double bankWh;
    private final double solarW;
    private final Derived base;
    private final List<WhatHelps> changes = new ArrayList<>();

    private ChanceChanges(ChanceTrip trip, double bankWh, double solarW, Derived base) {
        this.trip = trip;
        this.bankWh = bankWh;
        this.solarW = solarW;
        this.base = base;
        chargers = trip.chargers(bankWh);
    }

    /**
     * The changes that apply, the most helpful first.
     *
     * @param base chance of the system that was found
     */
    static List<WhatHelps> ranked(ChanceTrip trip, double bankWh, double solarW, Derived base) {
        ChanceChanges all = new ChanceChanges(trip, bankWh, solarW, base);
        all.collect();
        return all.changes.stream()
                .sorted(Comparator.comparingDouble(c -> c.chanceOfRunningFlat().value()))
                .toList();
    }

    private void collect() {
        TripModel model = trip.model();
        add("more-panel", "100 W more panel", scenario(model, bankWh, solarW + MORE_PANEL_W, 0));
        add("more-battery", "half as much battery again", scenario(model, bankWh * MORE_BANK, solarW, 0));
        add("less-load", "a fifth less of everything that runs", scenario(trip.drawing(LESS_LOAD), bankWh, solarW, 0));
        boolean anHour = model.trip().stays().stream().anyMatch(stay -> stay.drivingHoursPerDay() + 1 <= 24);
        if (chargers.alternator().isPresent() && anHour) {
            add("more-driving", "an hour's drive more each day", scenario(model, bankWh, solarW, 1));
        }
    }

    private Scenario scenario(TripModel model, double nominalWh, double arrayW, double moreDriving) {
        return trip.scenario(model, chargers, nominalWh, arrayW, moreDriving);
    }

    private void add(String code, String change, Scenario scenario) {
        Derived chance = Derived.computed(
                "chance of running flat with " + change,
                trip.share(scenario),
                Unit.SHARE,
                Formula.definition("p = n_flat / N in the same weathers, with one change; p0 without it"),
                base.as("p0"));
        changes.add(new WhatHelps(code, change, chance, base));
    }
}
