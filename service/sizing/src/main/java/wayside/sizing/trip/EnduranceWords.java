package wayside.sizing.trip;

import java.util.List;
import java.util.Locale;
import wayside.sizing.endurance.Outcome;
import wayside.sizing.endurance.WorstRun;

/** The answer in plain words. */
public final class EnduranceWords {
    private EnduranceWords() {}

    static String advice(EnduranceQuestion question, Outcome outcome, List<WhatHelps> changes) {
        double chance = outcome.chance().value();
        String head = String.format(
                Locale.ROOT,
                "With %,.0f Wh of battery and %.0f W of panel you run flat on %s.",
                question.charger().nominalEnergyWh().value(),
                question.solarW().value(),
                often(chance));
        return head + whatHelpsMost(changes);
    }

    /** The first of the changes, when it helps at all. */
    public static String whatHelpsMost(List<WhatHelps> changes) {
        return changes.stream()
                .filter(WhatHelps::helps)
                .findFirst()
                .map(change -> String.format(
                        Locale.ROOT,
                        " What helps most: %s makes that %s.",
                        change.change(),
                        often(change.chanceOfRunningFlat().value())))
                .orElse("");
    }

    /** Small chances are said of a thousand trips, others of a hundred. */
    public static String often(double chance) {
        if (chance == 0) {
            return "none of the trips that were tried";
        }
        if (chance < 0.01) {
            return String.format(Locale.ROOT, "%.0f in 1,000 such trips", Math.max(1, 1000 * chance));
        }
        return String.format(Locale.ROOT, "%.0f in 100 such trips", 100 * chance);
    }

    static String worst(Outcome outcome) {
        WorstRun worst = outcome.worst();
        double usual = outcome.solarWh();
        String sun = usual > 0
                ? String.format(
                        Locale.ROOT,
                        " The sun gave %.0f Wh over the trip, %.0f %% of what it usually gives.",
                        worst.solarWh(),
                        100 * worst.solarWh() / usual)
                : "";
        if (worst.firstFlatHour() < 0) {
            return String.format(
                            Locale.ROOT,
                            "Even the worst of %d trips did not run flat; its battery fell to %.0f %%.",
                            outcome.runs(),
                            100 * worst.lowestShare())
                    + sun;
        }
        return String.format(
                        Locale.ROOT,
                        "The worst of %d trips ran flat on day %d at %02d:00 and went short for %d hours in all, %.0f Wh"
                                + " of what matters.",
                        outcome.runs(),
                        worst.firstFlatHour() / 24 + 1,
                        worst.firstFlatHour() % 24,
                        worst.flatHours(),
                        worst.unmetWh())
                + sun;
    }
}
