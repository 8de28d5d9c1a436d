package wayside.server.operation.energybudget;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import wayside.server.answer.Figures;
import wayside.server.answer.Tail;
import wayside.sizing.budget.EnergyBudget;
import wayside.sizing.budget.HookupRelief;
import wayside.sizing.budget.LoadShare;
import wayside.sizing.demand.SupplyDemand;
import wayside.sizing.inverter.InverterLoss;
import wayside.sizing.trace.Answer;
import wayside.sizing.trace.Derived;

/** The answer of an energy budget. */
public final class EnergyBudgetWriter {
    private EnergyBudgetWriter() {}

    public static EnergyBudgetResponse write(Answer<EnergyBudget> answer, Figures figures) {
        EnergyBudgetView view = view(answer.result(), figures);
        Tail tail = Tail.of(answer, figures);
        return new EnergyBudgetResponse(
                view.dailyLoadWh(),
                view.dailyLossWh(),
                view.dailyTotalWh(),
                view.dailyTotalAh(),
                view.busVoltageV(),
                view.dc(),
                view.ac(),
                view.hourlyW(),
                view.loads(),
                view.losses(),
                view.inverter(),
                tail.assumptions(),
                tail.cautions(),
                tail.engine(),
                tail.derivation());
    }

    /** The budget as a part of a larger answer. */
    public static EnergyBudgetView view(EnergyBudget budget, Figures figures) {
        return new EnergyBudgetView(
                figures.at("dailyLoadWh", budget.dailyLoadWh()),
                figures.at("dailyLossWh", budget.dailyLossWh()),
                figures.at("dailyTotalWh", budget.dailyTotalWh()),
                figures.at("dailyTotalAh", budget.dailyTotalAh()),
                figures.at("busVoltageV", budget.busVoltageV()),
                supply(budget.demand().dc(), budget.dcPeakA(), figures.in("dc")),
                supply(budget.demand().ac(), budget.acPeakA(), figures.in("ac")),
                budget.hourlyW(),
                loads(budget, figures.in("loads")),
                losses(budget, figures.in("losses")),
                inverter(budget, figures.in("inverter")),
                budget.relief()
                        .map(relief -> hookup(relief, figures.in("hookup")))
                        .orElse(null));
    }

    private static HookupView hookup(HookupRelief relief, Figures figures) {
        return new HookupView(
                figures.at("powerW", relief.hookup().limitW()),
                figures.at("acWh", relief.acWh()),
                figures.at("relievedWh", relief.relievedWh()));
    }

    private static SupplyDemandView supply(SupplyDemand demand, Derived peakA, Figures figures) {
        return new SupplyDemandView(
                figures.at("dailyWh", demand.dailyEnergyWh()),
                figures.at("peakW", demand.peakPowerW()),
                figures.at("peakA", peakA),
                figures.at("surgeW", demand.surgePowerW()));
    }

    private static List<LoadShareView> loads(EnergyBudget budget, Figures figures) {
        List<LoadShareView> loads = new ArrayList<>();
        for (LoadShare load : budget.loads()) {
            Figures here = figures.entry(loads.size());
            loads.add(new LoadShareView(
                    load.demand().load().name(),
                    here.at("dailyWh", load.demand().dailyEnergyWh()),
                    here.at("share", load.share())));
        }
        return loads;
    }

    private static LossesView losses(EnergyBudget budget, Figures figures) {
        Optional<InverterLoss> inverter = budget.inverterLoss();
        return new LossesView(
                figures.at("standbyWh", budget.standbyWh()),
                inverter.map(loss -> figures.at("inverterIdleWh", loss.idleWh()))
                        .orElse(0.0),
                inverter.map(loss -> figures.at("inverterConversionWh", loss.conversionWh()))
                        .orElse(0.0),
                budget.converter()
                        .map(converter -> figures.at("converterWh", converter.lossWh()))
                        .orElse(null),
                budget.heaterWh().map(heater -> figures.at("heaterWh", heater)).orElse(null));
    }

    private static @Nullable InverterView inverter(EnergyBudget budget, Figures figures) {
        if (budget.inverterRating().isEmpty() || budget.inverterLoss().isEmpty()) {
            return null;
        }
        return new InverterView(
                figures.at("continuousW", budget.inverterRating().get().continuousW()),
                figures.at("surgeW", budget.inverterRating().get().surgeW()),
                figures.at("idleW", budget.inverterLoss().get().idlePowerW()),
                figures.at("hoursPerDay", budget.inverterLoss().get().hoursOn()));
    }
}
