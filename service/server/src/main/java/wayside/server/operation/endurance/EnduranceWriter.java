package wayside.server.operation.endurance;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import wayside.server.answer.Figures;
import wayside.server.answer.LawView;
import wayside.server.answer.LawWriter;
import wayside.server.answer.MessageView;
import wayside.server.answer.MessageWriter;
import wayside.server.answer.Tail;
import wayside.sizing.endurance.Endurance;
import wayside.sizing.endurance.WhatHelps;
import wayside.sizing.ledger.WorstRun;
import wayside.sizing.trace.Answer;

/** The answer of an endurance. */
public final class EnduranceWriter {
    private static final double HUNDREDTHS = 100;

    private EnduranceWriter() {}

    public static EnduranceResponse write(Answer<Endurance> answer, Figures figures) {
        Endurance result = answer.result();
        ChanceView chance = chance(result.chance(), figures.in("chanceOfRunningFlat"));
        List<LawView> laws = LawWriter.list(result.laws(), figures.in("laws"));
        double unmetWh = figures.at("expectedUnmetWh", result.shortfall().unmetWh());
        double unmetHours = figures.at("expectedUnmetHours", result.shortfall().unmetHours());
        double shed = figures.at("shedWh", result.shortfall().shedWh());
        double whenOld = figures.at("chanceWhenOld", result.whenOld());
        List<ServedLoadView> served = ServedWriter.loads(result.served(), figures.in("served"));
        BalanceView balance = ServedWriter.balance(result.balance(), figures.in("balance"));
        StateOfChargeView states = states(result, figures);
        EnergySourcesView sources = sources(result.sources(), figures);
        EnergyUsesView uses = uses(result.uses(), figures);
        double missed = figures.at("balanceErrorWh", result.uses().balanceErrorWh());
        double surplus = figures.at("surplusWh", result.sources().surplusWh());
        CyclesView cycles = cycles(result.cycles(), figures);
        double coldHours = figures.at("coldLockoutHours", result.cycles().coldLockoutHours());
        double coldWh = figures.at("coldLockoutWh", result.cycles().coldLockoutWh());
        InverseView inverse = inverse(result, figures);
        int compared = (int) figures.at("comparedRuns", result.comparedRuns());
        List<WhatHelpsView> helps = helps(result.whatHelps(), figures);
        int runs = (int) figures.at("runs", result.runs());
        Tail tail = Tail.of(answer, figures);
        return new EnduranceResponse(
                MessageWriter.write(result.advice()),
                chance,
                laws,
                runs,
                (int) result.seed(),
                unmetWh,
                unmetHours,
                shed,
                whenOld,
                served,
                balance,
                states,
                warmth(result.bands()),
                sources,
                uses,
                missed,
                surplus,
                cycles,
                coldHours,
                coldWh,
                worst(result.worst(), MessageWriter.write(result.worstMessage())),
                inverse,
                compared,
                helps,
                tail.assumptions(),
                tail.cautions(),
                tail.engine(),
                tail.derivation());
    }

    static ChanceView chance(Endurance.Chance chance, Figures figures) {
        return new ChanceView(
                figures.at("value", chance.value()),
                figures.at("low", chance.low()),
                figures.at("high", chance.high()));
    }

    private static StateOfChargeView states(Endurance result, Figures figures) {
        Endurance.Bands bands = result.bands();
        return new StateOfChargeView(
                Arrays.stream(bands.hours()).boxed().toList(),
                Arrays.stream(bands.p05()).boxed().toList(),
                Arrays.stream(bands.p50()).boxed().toList(),
                Arrays.stream(bands.p95()).boxed().toList(),
                figures.in("stateOfCharge").at("floor", result.floorShare()));
    }

    private static BankTemperatureView warmth(Endurance.Bands bands) {
        double[][] bankC = bands.bankC();
        return new BankTemperatureView(rounded(bankC[0]), rounded(bankC[1]), rounded(bankC[2]));
    }

    /** The bands are counted in steps of a twenty-fifth of a degree; more digits would only be longer. */
    private static List<Double> rounded(double[] celsius) {
        return Arrays.stream(celsius)
                .map(c -> Math.round(HUNDREDTHS * c) / HUNDREDTHS)
                .boxed()
                .toList();
    }

    private static EnergySourcesView sources(Endurance.Sources sources, Figures figures) {
        return new EnergySourcesView(
                figures.in("sources").at("solarWh", sources.solarWh()),
                figures.in("sources").at("alternatorWh", sources.alternatorWh()),
                figures.in("sources").at("shoreWh", sources.shoreWh()));
    }

    private static EnergyUsesView uses(Endurance.Uses uses, Figures figures) {
        return new EnergyUsesView(
                figures.in("uses").at("loadsWh", uses.loadsWh()),
                figures.in("uses").at("inverterLossWh", uses.inverterLossWh()),
                figures.in("uses").at("standbyWh", uses.standbyWh()),
                figures.in("uses").at("heaterWh", uses.heaterWh()),
                figures.in("uses").at("storageLossWh", uses.storageLossWh()),
                figures.in("uses").at("storeGainWh", uses.storeGainWh()));
    }

    private static CyclesView cycles(Endurance.Cycles cycles, Figures figures) {
        return new CyclesView(
                figures.in("cycles").at("equivalentFull", cycles.equivalentFull()),
                figures.in("cycles").at("deepestShare", cycles.deepestShare()),
                figures.in("cycles").at("usualDeepestShare", cycles.usualDeepestShare()));
    }

    private static WorstRunView worst(WorstRun worst, MessageView message) {
        return new WorstRunView(
                message.code(),
                message.text(),
                message.parameters(),
                worst.run(),
                worst.firstFlatHour() < 0 ? null : worst.firstFlatHour(),
                worst.flatHours(),
                worst.unmetWh(),
                worst.lowestShare(),
                worst.solarWh());
    }

    private static InverseView inverse(Endurance result, Figures figures) {
        double accepted = figures.in("inverse").at("acceptedChance", result.acceptedChance());
        double factor = figures.in("inverse").at("loadFactor", result.loadFactor());
        @Nullable
        Integer nights = result.nights()
                .map(value -> (int) Math.round(figures.in("inverse").at("nights", value)))
                .orElse(null);
        int runs = (int) figures.in("inverse").at("nightsRuns", result.nightsRuns());
        return new InverseView(accepted, factor, nights, result.nightsAreMore(), runs);
    }

    public static List<WhatHelpsView> helps(List<WhatHelps> changes, Figures figures) {
        List<WhatHelpsView> views = new ArrayList<>();
        for (WhatHelps change : changes) {
            Figures here = figures.in("whatHelps").entry(views.size());
            MessageView message = MessageWriter.write(change.change());
            views.add(new WhatHelpsView(
                    message.code(),
                    message.text(),
                    message.parameters(),
                    here.at("chanceOfRunningFlat", change.chanceOfRunningFlat()),
                    here.at("chanceWithoutChange", change.chanceWithout()),
                    new SparedChanceView(
                            here.in("spared").at("value", change.spared().value()),
                            here.in("spared").at("low", change.spared().low()),
                            here.in("spared").at("high", change.spared().high())),
                    change.addedKg().map(kg -> here.at("addedMassKg", kg)).orElse(null)));
        }
        return views;
    }
}
