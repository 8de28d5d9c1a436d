package wayside.server.mapping;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import wayside.server.api.AlternatorView;
import wayside.server.api.CircuitView;
import wayside.server.api.InverterChoiceView;
import wayside.server.api.PowerUnitView;
import wayside.server.api.RecommendationResponse;
import wayside.server.api.RuleOfThumbView;
import wayside.server.api.ShoreView;
import wayside.sizing.recommendation.Recommendation;
import wayside.sizing.system.Chargers;
import wayside.sizing.system.PowerUnit;
import wayside.sizing.system.RuleOfThumb;
import wayside.sizing.system.SizedSystem;
import wayside.sizing.trace.Answer;
import wayside.sizing.wiring.SizedCircuit;

/** The answer of a recommendation. */
public final class RecommendationWriter {
    private RecommendationWriter() {}

    public static RecommendationResponse write(Answer<Recommendation> answer, Figures figures) {
        Recommendation recommendation = answer.result();
        SizedSystem system = recommendation.system();
        var shortfalls = ShortfallWriter.list("/shortfalls", recommendation.shortfalls(), figures);
        var budget = EnergyBudgetWriter.view("/energyBudget", system.energyBudget(), figures);
        var battery = BatteryWriter.battery(system, figures);
        var byChemistry = BatteryWriter.byChemistry(system.battery().byChemistry(), figures);
        PowerUnitView powerUnit = powerUnit(system.powerUnit(), figures);
        var solar = SolarWriter.solar(system, figures);
        AlternatorView alternator = alternator(system.chargers(), figures);
        ShoreView shore = shore(system.chargers(), figures);
        InverterChoiceView inverter = inverter(system, figures);
        List<CircuitView> circuits = circuits(system.circuits(), figures);
        RuleOfThumbView thumb = ruleOfThumb(recommendation, figures);
        var found = recommendation.byChance().map(chance -> ByChanceWriter.of(chance, figures));
        Tail tail = Tail.of(answer, figures);
        return new RecommendationResponse(
                recommendation.feasible(),
                shortfalls,
                budget,
                battery,
                byChemistry,
                powerUnit,
                solar,
                alternator,
                shore,
                inverter,
                circuits,
                thumb,
                found.map(ByChanceWriter::chance).orElse(null),
                found.map(ByChanceWriter::curve).orElse(null),
                found.map(ByChanceWriter::objective).orElse(null),
                found.map(ByChanceWriter::whatHelps).orElse(null),
                found.map(ByChanceWriter::advice).orElse(null),
                tail.derivation(),
                tail.assumptions(),
                tail.cautions(),
                tail.steps());
    }

    private static PowerUnitView powerUnit(PowerUnit unit, Figures figures) {
        return new PowerUnitView(
                figures.at("/powerUnit/nominalEnergyWh", unit.nominalEnergyWh()),
                figures.at("/powerUnit/outletCurrentLimitA", unit.outletCurrentLimitA()),
                unit.fits(),
                unit.reasons());
    }

    private static @Nullable AlternatorView alternator(Chargers chargers, Figures figures) {
        return chargers.alternator()
                .map(charger -> new AlternatorView(
                        figures.at("/alternator/chargerCurrentA", charger.chargerCurrentA()),
                        figures.at("/alternator/chargerPowerW", charger.chargerPowerW()),
                        figures.at(
                                "/alternator/energyPerDayWh",
                                chargers.alternatorWh().orElseThrow()),
                        figures.at(
                                "/alternator/hoursToFull",
                                chargers.alternatorHoursToFull().orElseThrow())))
                .orElse(null);
    }

    private static @Nullable ShoreView shore(Chargers chargers, Figures figures) {
        return chargers.shore()
                .map(charger -> new ShoreView(
                        figures.at("/shore/chargerPowerW", charger.chargerPowerW()),
                        figures.at("/shore/mainsPowerW", charger.mainsPowerW()),
                        figures.at("/shore/energyPerDayWh", chargers.shoreWh().orElseThrow()),
                        figures.at(
                                "/shore/hoursToFull",
                                chargers.shoreHoursToFull().orElseThrow())))
                .orElse(null);
    }

    private static @Nullable InverterChoiceView inverter(SizedSystem system, Figures figures) {
        return system.inverter()
                .map(inverter -> new InverterChoiceView(
                        figures.at("/inverter/continuousW", inverter.rating().continuousW()),
                        figures.at("/inverter/surgeW", inverter.rating().surgeW()),
                        figures.at("/inverter/idleW", inverter.idleW()),
                        figures.at("/inverter/batteryCurrentA", inverter.batteryCurrentA())))
                .orElse(null);
    }

    private static List<CircuitView> circuits(List<SizedCircuit> circuits, Figures figures) {
        List<CircuitView> views = new ArrayList<>();
        for (SizedCircuit circuit : circuits) {
            views.add(new CircuitWriter("/circuits/" + views.size(), figures).write(circuit));
        }
        return views;
    }

    private static RuleOfThumbView ruleOfThumb(Recommendation recommendation, Figures figures) {
        RuleOfThumb thumb = recommendation.system().ruleOfThumb();
        return new RuleOfThumbView(
                figures.at("/ruleOfThumb/nominalEnergyWh", thumb.nominalEnergyWh()),
                thumb.solarPowerW()
                        .map(power -> figures.at("/ruleOfThumb/solarPowerW", power))
                        .orElse(null),
                figures.at("/ruleOfThumb/autonomyDays", thumb.autonomyDays()),
                recommendation
                        .byChance()
                        .flatMap(found -> found.ruleOfThumbChance())
                        .map(chance -> figures.at("/ruleOfThumb/chanceOfRunningFlat", chance))
                        .orElse(null));
    }
}
