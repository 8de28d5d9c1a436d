package wayside.sizing.trip;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import wayside.sizing.brief.BuiltSystem;
import wayside.sizing.brief.EnergyBrief;
import wayside.sizing.brief.Load;
import wayside.sizing.brief.PanelMount;
import wayside.sizing.brief.Stay;
import wayside.sizing.brief.Supply;
import wayside.sizing.demand.LoadDemand;
import wayside.sizing.endurance.RecordedWeather;
import wayside.sizing.endurance.Simulation;
import wayside.sizing.trace.Derived;

/** Tries one change after another in the same weathers, and ranks them. */
final class EnduranceChanges {
    private static final double MORE_PANEL_W = 100;
    private static final double MORE_BANK = 1.5;
    private static final double LESS_LOAD = 0.8;
    private static final double TILT_DEGREES = 30;
    private static final double CABIN_K = 15;

    private final EnduranceQuestion question;
    private final RecordedWeather weather;
    private final Derived base;
    private final List<WhatHelps> changes = new ArrayList<>();

    private EnduranceChanges(EnduranceQuestion question, RecordedWeather weather, Derived base) {
        this.question = question;
        this.weather = weather;
        this.base = base;
    }

    /** The changes that apply, the most helpful first. */
    static List<WhatHelps> ranked(EnduranceQuestion question, RecordedWeather weather, Derived base) {
        EnduranceChanges all = new EnduranceChanges(question, weather, base);
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
        add("more-panel", "100 W more panel", plain.withSolar(solarW + MORE_PANEL_W), weather);
        add("more-battery", "half as much battery again", plain.withBank(plain.nominalWh() * MORE_BANK), weather);
        boolean flat =
                question.model().months().get(0).array().position().tilt().value() == 0;
        if (solarW > 0 && flat) {
            PanelMount panel = question.brief().system().panel();
            PanelMount tilted =
                    new PanelMount(OptionalDouble.of(TILT_DEGREES), OptionalDouble.empty(), panel.shadedShare());
            add(
                    "tilt-panel",
                    "the panel tilted by 30 degrees towards the equator",
                    plain,
                    RecordedWeather.of(
                            question.skies()
                                    .over(
                                            question.model(),
                                            tilted,
                                            question.brief().sampling().seed()),
                            weather.runs()));
        }
    }

    /** A lithium bank that frost keeps from being charged may stand in the cabin. */
    private void warmth() {
        if (question.coldestBankC() < question.data().lowestChargeC().value()) {
            add(
                    "warmer-battery",
                    "the battery in a heated cabin, 15 K warmer",
                    question.warmerScenario(CABIN_K),
                    weather);
        }
    }

    private void loads() {
        EnergyBrief energy = question.energy();
        int largest = largest();
        Load load = energy.loads().get(largest);
        add(
                "less-load",
                load.name() + " with a fifth less",
                question.taking(energy.with(largest, load.drawing(LESS_LOAD))),
                weather);
        inverterHours(energy)
                .ifPresent(hours -> add(
                        "inverter-off",
                        String.format(
                                Locale.ROOT, "the inverter on for %.1f hours a day only, while it is used", hours),
                        question.taking(energy.through(energy.inverter().onFor(hours))),
                        weather));
    }

    private int largest() {
        List<LoadDemand> demands = question.model().budgets().get(0).demand().loads();
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
                .filter(load -> load.supply() == Supply.AC)
                .mapToDouble(Load::hoursOn)
                .sum();
        double told = Math.ceil(10 * used - 1e-9) / 10;
        double on = energy.inverter().hoursPerDay().orElse(24);
        return used > 0 && told < 0.75 * on ? Optional.of(told) : Optional.empty();
    }

    private void travel() {
        BuiltSystem system = question.brief().system();
        if (system.alternatorChargerA() > 0 && hasAnHourMore(Stay::drivingHoursPerDay)) {
            add("more-driving", "an hour's drive more each day", question.travelling(1, 0), weather);
        }
        if (system.shoreChargerW() > 0 && hasAnHourMore(Stay::hookupHoursPerDay)) {
            add("more-hookup", "an hour more at a hookup each day", question.travelling(0, 1), weather);
        }
    }

    private boolean hasAnHourMore(ToDoubleFunction<Stay> hours) {
        return question.brief().trip().stays().stream().mapToDouble(hours).anyMatch(each -> each + 1 <= 24);
    }

    private void add(String code, String change, Scenario scenario, RecordedWeather sun) {
        int flat = Simulation.flatRuns(scenario.ledger(), sun, sun.runs());
        changes.add(new WhatHelps(
                code,
                change,
                LedgerSteps.share("chance of running flat with " + change, flat, sun.runs(), base),
                base));
    }
}
