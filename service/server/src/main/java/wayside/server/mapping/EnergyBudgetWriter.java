package wayside.server.mapping;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import wayside.server.api.EnergyBudgetResponse;
import wayside.server.api.EnergyBudgetView;
import wayside.server.api.InverterView;
import wayside.server.api.LoadShareView;
import wayside.server.api.LossesView;
import wayside.server.api.SupplyDemandView;
import wayside.sizing.budget.EnergyBudget;
import wayside.sizing.budget.LoadShare;
import wayside.sizing.demand.SupplyDemand;
import wayside.sizing.inverter.InverterLoss;
import wayside.sizing.trace.Answer;
import wayside.sizing.trace.Derived;

/** The answer of an energy budget. */
public final class EnergyBudgetWriter {
    private EnergyBudgetWriter() {}

    public static EnergyBudgetResponse write(Answer<EnergyBudget> answer, Figures figures) {
        EnergyBudgetView view = view("", answer.result(), figures);
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
                tail.derivation(),
                tail.assumptions(),
                tail.cautions(),
                tail.steps());
    }

    /** The budget as a part of a larger answer, at a JSON Pointer of it. */
    static EnergyBudgetView view(String at, EnergyBudget budget, Figures figures) {
        return new EnergyBudgetView(
                figures.at(at + "/dailyLoadWh", budget.dailyLoadWh()),
                figures.at(at + "/dailyLossWh", budget.dailyLossWh()),
                figures.at(at + "/dailyTotalWh", budget.dailyTotalWh()),
                figures.at(at + "/dailyTotalAh", budget.dailyTotalAh()),
                figures.at(at + "/busVoltageV", budget.busVoltageV()),
                supply(at + "/dc", budget.demand().dc(), budget.dcPeakA(), figures),
                supply(at + "/ac", budget.demand().ac(), budget.acPeakA(), figures),
                budget.hourlyW(),
                loads(at + "/loads/", budget, figures),
                losses(at + "/losses", budget, figures),
                inverter(at + "/inverter", budget, figures));
    }

    private static SupplyDemandView supply(String at, SupplyDemand demand, Derived peakA, Figures figures) {
        return new SupplyDemandView(
                figures.at(at + "/dailyWh", demand.dailyEnergyWh()),
                figures.at(at + "/peakW", demand.peakPowerW()),
                figures.at(at + "/peakA", peakA),
                figures.at(at + "/surgeW", demand.surgePowerW()));
    }

    private static List<LoadShareView> loads(String list, EnergyBudget budget, Figures figures) {
        List<LoadShareView> loads = new ArrayList<>();
        for (LoadShare load : budget.loads()) {
            String at = list + loads.size();
            loads.add(new LoadShareView(
                    load.demand().load().name(),
                    figures.at(at + "/dailyWh", load.demand().dailyEnergyWh()),
                    figures.at(at + "/share", load.share())));
        }
        return loads;
    }

    private static LossesView losses(String at, EnergyBudget budget, Figures figures) {
        Optional<InverterLoss> inverter = budget.inverterLoss();
        return new LossesView(
                figures.at(at + "/standbyWh", budget.standbyWh()),
                inverter.map(loss -> figures.at(at + "/inverterIdleWh", loss.idleWh()))
                        .orElse(0.0),
                inverter.map(loss -> figures.at(at + "/inverterConversionWh", loss.conversionWh()))
                        .orElse(0.0));
    }

    private static @Nullable InverterView inverter(String at, EnergyBudget budget, Figures figures) {
        if (budget.inverterRating().isEmpty() || budget.inverterLoss().isEmpty()) {
            return null;
        }
        return new InverterView(
                figures.at(at + "/continuousW", budget.inverterRating().get().continuousW()),
                figures.at(at + "/surgeW", budget.inverterRating().get().surgeW()),
                figures.at(at + "/idleW", budget.inverterLoss().get().idlePowerW()),
                figures.at(at + "/hoursPerDay", budget.inverterLoss().get().hoursOn()));
    }
}
