package wayside.server.mapping;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import wayside.server.api.ChanceView;
import wayside.server.api.CyclesView;
import wayside.server.api.EnduranceResponse;
import wayside.server.api.EnergySourcesView;
import wayside.server.api.EnergyUsesView;
import wayside.server.api.InverseView;
import wayside.server.api.StateOfChargeView;
import wayside.server.api.WhatHelpsView;
import wayside.server.api.WorstRunView;
import wayside.sizing.endurance.WorstRun;
import wayside.sizing.trace.Answer;
import wayside.sizing.trip.Endurance;
import wayside.sizing.trip.WhatHelps;

/** The answer of an endurance. */
public final class EnduranceWriter {
    private EnduranceWriter() {}

    public static EnduranceResponse write(Answer<Endurance> answer, Figures figures) {
        Endurance result = answer.result();
        ChanceView chance = chance("/chanceOfRunningFlat", result.chance(), figures);
        double unmetWh = figures.at("/expectedUnmetWh", result.shortfall().unmetWh());
        double unmetHours = figures.at("/expectedUnmetHours", result.shortfall().unmetHours());
        double shed = figures.at("/shedWh", result.shortfall().shedWh());
        StateOfChargeView states = states(result, figures);
        EnergySourcesView sources = sources(result.sources(), figures);
        EnergyUsesView uses = uses(result.uses(), figures);
        double missed = figures.at("/balanceErrorWh", result.uses().balanceErrorWh());
        double surplus = figures.at("/surplusWh", result.sources().surplusWh());
        CyclesView cycles = cycles(result.cycles(), figures);
        double coldHours = figures.at("/coldLockoutHours", result.cycles().coldLockoutHours());
        double coldWh = figures.at("/coldLockoutWh", result.cycles().coldLockoutWh());
        InverseView inverse = inverse(result, figures);
        int compared = (int) figures.at("/comparedRuns", result.comparedRuns());
        List<WhatHelpsView> helps = helps(result.whatHelps(), figures);
        int runs = (int) figures.at("/runs", result.runs());
        Tail tail = Tail.of(answer, figures);
        return new EnduranceResponse(
                result.advice(),
                chance,
                runs,
                (int) result.seed(),
                unmetWh,
                unmetHours,
                shed,
                states,
                sources,
                uses,
                missed,
                surplus,
                cycles,
                coldHours,
                coldWh,
                worst(result.worst(), result.worstText()),
                inverse,
                compared,
                helps,
                tail.derivation(),
                tail.assumptions(),
                tail.cautions(),
                tail.steps());
    }

    static ChanceView chance(String at, Endurance.Chance chance, Figures figures) {
        return new ChanceView(
                figures.at(at + "/value", chance.value()),
                figures.at(at + "/low", chance.low()),
                figures.at(at + "/high", chance.high()));
    }

    private static StateOfChargeView states(Endurance result, Figures figures) {
        Endurance.Bands bands = result.bands();
        return new StateOfChargeView(
                Arrays.stream(bands.hours()).boxed().toList(),
                Arrays.stream(bands.p05()).boxed().toList(),
                Arrays.stream(bands.p50()).boxed().toList(),
                Arrays.stream(bands.p95()).boxed().toList(),
                figures.at("/stateOfCharge/floor", result.floorShare()));
    }

    private static EnergySourcesView sources(Endurance.Sources sources, Figures figures) {
        return new EnergySourcesView(
                figures.at("/sources/solarWh", sources.solarWh()),
                figures.at("/sources/alternatorWh", sources.alternatorWh()),
                figures.at("/sources/shoreWh", sources.shoreWh()));
    }

    private static EnergyUsesView uses(Endurance.Uses uses, Figures figures) {
        return new EnergyUsesView(
                figures.at("/uses/loadsWh", uses.loadsWh()),
                figures.at("/uses/inverterLossWh", uses.inverterLossWh()),
                figures.at("/uses/standbyWh", uses.standbyWh()),
                figures.at("/uses/storageLossWh", uses.storageLossWh()),
                figures.at("/uses/storeGainWh", uses.storeGainWh()));
    }

    private static CyclesView cycles(Endurance.Cycles cycles, Figures figures) {
        return new CyclesView(
                figures.at("/cycles/equivalentFull", cycles.equivalentFull()),
                figures.at("/cycles/deepestShare", cycles.deepestShare()),
                figures.at("/cycles/usualDeepestShare", cycles.usualDeepestShare()));
    }

    private static WorstRunView worst(WorstRun worst, String text) {
        return new WorstRunView(
                text,
                worst.run(),
                worst.firstFlatHour() < 0 ? null : worst.firstFlatHour(),
                worst.flatHours(),
                worst.unmetWh(),
                worst.lowestShare(),
                worst.solarWh());
    }

    private static InverseView inverse(Endurance result, Figures figures) {
        double accepted = figures.at("/inverse/acceptedChance", result.acceptedChance());
        double factor = figures.at("/inverse/loadFactor", result.loadFactor());
        @Nullable
        Integer nights = result.nights()
                .map(value -> (int) Math.round(figures.at("/inverse/nights", value)))
                .orElse(null);
        int runs = (int) figures.at("/inverse/nightsRuns", result.nightsRuns());
        return new InverseView(accepted, factor, nights, result.nightsAreMore(), runs);
    }

    static List<WhatHelpsView> helps(List<WhatHelps> changes, Figures figures) {
        List<WhatHelpsView> views = new ArrayList<>();
        for (WhatHelps change : changes) {
            String at = "/whatHelps/" + views.size();
            views.add(new WhatHelpsView(
                    change.code(),
                    change.change(),
                    figures.at(at + "/chanceOfRunningFlat", change.chanceOfRunningFlat()),
                    figures.at(at + "/chanceWithoutChange", change.chanceWithout())));
        }
        return views;
    }
}
