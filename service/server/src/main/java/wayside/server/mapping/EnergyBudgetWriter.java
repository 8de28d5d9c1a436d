package wayside.server.mapping;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import wayside.server.api.EnergyBudgetResponse;
import wayside.server.api.InverterView;
import wayside.server.api.LoadShareView;
import wayside.server.api.LossesView;
import wayside.server.api.SupplyDemandView;
import wayside.sizing.Answer;
import wayside.sizing.EnergyBudget;
import wayside.sizing.LoadShare;
import wayside.sizing.demand.SupplyDemand;
import wayside.sizing.inverter.InverterLoss;
import wayside.sizing.trace.Derived;

/** The answer of an energy budget. */
public final class EnergyBudgetWriter {
    private EnergyBudgetWriter() {}

    public static EnergyBudgetResponse write(Answer<EnergyBudget> answer) {
        EnergyBudget budget = answer.result();
        Figures figures = new Figures();
        double load = figures.at("/dailyLoadWh", budget.dailyLoadWh());
        double loss = figures.at("/dailyLossWh", budget.dailyLossWh());
        double total = figures.at("/dailyTotalWh", budget.dailyTotalWh());
        double charge = figures.at("/dailyTotalAh", budget.dailyTotalAh());
        double bus = figures.at("/busVoltageV", budget.busVoltageV());
        SupplyDemandView dc = supply("/dc", budget.demand().dc(), budget.dcPeakA(), figures);
        SupplyDemandView ac = supply("/ac", budget.demand().ac(), budget.acPeakA(), figures);
        List<LoadShareView> loads = loads(budget, figures);
        LossesView losses = losses(budget, figures);
        InverterView inverter = inverter(budget, figures);
        Tail tail = Tail.of(answer, figures);
        return new EnergyBudgetResponse(
                load,
                loss,
                total,
                charge,
                bus,
                dc,
                ac,
                budget.hourlyW(),
                loads,
                losses,
                inverter,
                tail.derivation(),
                tail.assumptions(),
                tail.cautions(),
                tail.steps());
    }

    private static SupplyDemandView supply(String at, SupplyDemand demand, Derived peakA, Figures figures) {
        return new SupplyDemandView(
                figures.at(at + "/dailyWh", demand.dailyEnergyWh()),
                figures.at(at + "/peakW", demand.peakPowerW()),
                figures.at(at + "/peakA", peakA),
                figures.at(at + "/surgeW", demand.surgePowerW()));
    }

    private static List<LoadShareView> loads(EnergyBudget budget, Figures figures) {
        List<LoadShareView> loads = new ArrayList<>();
        for (LoadShare load : budget.loads()) {
            String at = "/loads/" + loads.size();
            loads.add(new LoadShareView(
                    load.demand().load().name(),
                    figures.at(at + "/dailyWh", load.demand().dailyEnergyWh()),
                    figures.at(at + "/share", load.share())));
        }
        return loads;
    }

    private static LossesView losses(EnergyBudget budget, Figures figures) {
        Optional<InverterLoss> inverter = budget.inverterLoss();
        return new LossesView(
                figures.at("/losses/standbyWh", budget.standbyWh()),
                inverter.map(loss -> figures.at("/losses/inverterIdleWh", loss.idleWh()))
                        .orElse(0.0),
                inverter.map(loss -> figures.at("/losses/inverterConversionWh", loss.conversionWh()))
                        .orElse(0.0));
    }

    private static @Nullable InverterView inverter(EnergyBudget budget, Figures figures) {
        if (budget.inverterRating().isEmpty() || budget.inverterLoss().isEmpty()) {
            return null;
        }
        return new InverterView(
                figures.at(
                        "/inverter/continuousW", budget.inverterRating().get().continuousW()),
                figures.at("/inverter/surgeW", budget.inverterRating().get().surgeW()),
                figures.at("/inverter/idleW", budget.inverterLoss().get().idlePowerW()),
                figures.at("/inverter/hoursPerDay", budget.inverterLoss().get().hoursOn()));
    }
}
