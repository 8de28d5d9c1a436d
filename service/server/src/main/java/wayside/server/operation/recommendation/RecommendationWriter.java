package wayside.server.operation.recommendation;

import java.util.List;
import org.jspecify.annotations.Nullable;
import wayside.server.answer.Figures;
import wayside.server.answer.LawWriter;
import wayside.server.answer.MessageWriter;
import wayside.server.answer.ShortfallWriter;
import wayside.server.answer.Tail;
import wayside.server.operation.circuits.CircuitView;
import wayside.server.operation.circuits.CircuitsWriter;
import wayside.server.operation.energybudget.EnergyBudgetWriter;
import wayside.sizing.recommendation.Recommendation;
import wayside.sizing.system.Chargers;
import wayside.sizing.system.PowerUnit;
import wayside.sizing.system.RuleOfThumb;
import wayside.sizing.system.SizedSystem;
import wayside.sizing.trace.Answer;

/** The answer of a recommendation. */
public final class RecommendationWriter {
    private RecommendationWriter() {}

    public static RecommendationResponse write(Answer<Recommendation> answer, Figures figures) {
        Recommendation recommendation = answer.result();
        SizedSystem system = recommendation.system();
        var shortfalls = ShortfallWriter.list(recommendation.shortfalls(), figures.in("shortfalls"));
        var laws = LawWriter.list(recommendation.laws(), figures.in("laws"));
        var budget = EnergyBudgetWriter.view(system.energyBudget(), figures.in("energyBudget"));
        var battery = BatteryWriter.battery(system, figures.in("battery"));
        var byChemistry = BatteryWriter.byChemistry(system.battery().byChemistry(), figures.in("byChemistry"));
        PowerUnitView powerUnit = powerUnit(system.powerUnit(), figures.in("powerUnit"));
        var solar = SolarWriter.solar(system, recommendation.byChance().isEmpty(), figures.in("solar"));
        AlternatorView alternator = alternator(system.chargers(), figures.in("alternator"));
        ShoreView shore = shore(system.chargers(), figures.in("shore"));
        InverterChoiceView inverter = inverter(system, figures.in("inverter"));
        ConverterView converter = converter(system, figures.in("converter"));
        List<CircuitView> circuits = CircuitsWriter.write(system.circuits(), figures.in("circuits"));
        var graph = GraphWriter.write(system.graph(), figures.in("graph"));
        var acSide = system.ac()
                .map(ac -> AcSideWriter.write(ac, figures.in("acSide")))
                .orElse(null);
        double massKg = figures.at("massKg", system.mass().massKg());
        RuleOfThumbView thumb = ruleOfThumb(recommendation, figures.in("ruleOfThumb"));
        var found = recommendation.byChance().map(chance -> ByChanceWriter.of(chance, figures));
        Tail tail = Tail.of(answer, figures);
        return new RecommendationResponse(
                recommendation.feasible(),
                shortfalls,
                laws,
                budget,
                battery,
                byChemistry,
                powerUnit,
                solar,
                alternator,
                shore,
                inverter,
                converter,
                circuits,
                graph,
                acSide,
                massKg,
                thumb,
                found.map(ByChanceWriter::chance).orElse(null),
                recommendation
                        .moreDrivingHours()
                        .map(hours -> figures.at("moreDrivingHoursPerDay", hours))
                        .orElse(null),
                found.map(ByChanceWriter::served).orElse(null),
                found.map(ByChanceWriter::balance).orElse(null),
                found.map(ByChanceWriter::vitalReserveHours).orElse(null),
                found.map(ByChanceWriter::curve).orElse(null),
                found.map(ByChanceWriter::objective).orElse(null),
                found.map(ByChanceWriter::whatHelps).orElse(null),
                found.map(ByChanceWriter::smallerSystem).orElse(null),
                found.map(ByChanceWriter::advice).orElse(null),
                tail.assumptions(),
                tail.cautions(),
                tail.engine(),
                tail.derivation());
    }

    private static PowerUnitView powerUnit(PowerUnit unit, Figures figures) {
        return new PowerUnitView(
                new UnitNeedView(figures.in("needed").at("energyWh", unit.nominalEnergyWh())),
                unit.buyable()
                        .map(one -> new BuyableUnitView(
                                figures.in("buyable").at("energyWh", one.energyWh()),
                                figures.in("buyable").at("massKg", one.massKg())))
                        .orElse(null),
                figures.at("outletCurrentLimitA", unit.outletCurrentLimitA()),
                unit.fits(),
                unit.reasons().stream().map(MessageWriter::write).toList());
    }

    private static @Nullable AlternatorView alternator(Chargers chargers, Figures figures) {
        return chargers.alternator()
                .map(charger -> new AlternatorView(
                        figures.at("chargerCurrentA", charger.chargerCurrentA()),
                        figures.at("chargerLimitA", charger.limitA()),
                        figures.at("chargerPowerW", charger.chargerPowerW()),
                        figures.at("energyPerDayWh", chargers.alternatorWh().orElseThrow()),
                        figures.at(
                                "hoursToFull", chargers.alternatorHoursToFull().orElseThrow()),
                        ChargerWriter.needed(charger.buyable(), figures),
                        ChargerWriter.buyable(charger.buyable(), figures)))
                .orElse(null);
    }

    private static @Nullable ShoreView shore(Chargers chargers, Figures figures) {
        return chargers.shore()
                .map(charger -> new ShoreView(
                        figures.at("chargerPowerW", charger.chargerPowerW()),
                        figures.at("mainsPowerW", charger.mainsPowerW()),
                        figures.at("energyPerDayWh", chargers.shoreWh().orElseThrow()),
                        figures.at("hoursToFull", chargers.shoreHoursToFull().orElseThrow()),
                        ChargerWriter.needed(charger.buyable(), figures),
                        ChargerWriter.buyable(charger.buyable(), figures)))
                .orElse(null);
    }

    private static @Nullable InverterChoiceView inverter(SizedSystem system, Figures figures) {
        return system.inverter()
                .map(inverter -> new InverterChoiceView(
                        figures.at("continuousW", inverter.rating().continuousW()),
                        figures.at("surgeW", inverter.rating().surgeW()),
                        figures.at("idleW", inverter.idleW()),
                        figures.at("batteryCurrentA", inverter.batteryCurrentA()),
                        isGiven(system)
                                ? null
                                : new PowerNeedView(figures.in("needed")
                                        .at("powerW", inverter.rating().leastW())),
                        inverter.rating()
                                .buyable()
                                .map(pieces -> new BuyableInverterView(
                                        pieces.count(), pieces.size().continuousW()))
                                .orElse(null)))
                .orElse(null);
    }

    private static boolean isGiven(SizedSystem system) {
        return system.site().brief().system().inverter().continuousW().isPresent();
    }

    private static @Nullable ConverterView converter(SizedSystem system, Figures figures) {
        return system.converter()
                .map(choice -> new ConverterView(
                        figures.at("outputVoltageV", choice.converter().loadsVoltageV()),
                        figures.at("neededCurrentA", choice.neededA()),
                        (int) figures.at("count", choice.count()),
                        figures.at("ratedCurrentA", choice.ratedA()),
                        figures.at("dailyLossWh", choice.converter().lossWh())))
                .orElse(null);
    }

    private static RuleOfThumbView ruleOfThumb(Recommendation recommendation, Figures figures) {
        RuleOfThumb thumb = recommendation.system().ruleOfThumb();
        return new RuleOfThumbView(
                figures.at("nominalEnergyWh", thumb.nominalEnergyWh()),
                thumb.solarPowerW()
                        .map(power -> figures.at("solarPowerW", power))
                        .orElse(null),
                figures.at("autonomyDays", thumb.autonomyDays()),
                recommendation
                        .byChance()
                        .flatMap(found -> found.ruleOfThumbChance())
                        .map(chance -> figures.at("chanceOfRunningFlat", chance))
                        .orElse(null));
    }
}
