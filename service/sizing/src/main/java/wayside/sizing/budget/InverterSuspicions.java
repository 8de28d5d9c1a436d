package wayside.sizing.budget;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wayside.sizing.brief.RunningPower;
import wayside.sizing.brief.Surge;
import wayside.sizing.demand.LoadDemand;
import wayside.sizing.inverter.InverterRating;
import wayside.sizing.trace.Caution;
import wayside.sizing.trace.CautionCode;
import wayside.sizing.trace.Message;
import wayside.sizing.trace.Parameter;
import wayside.sizing.trace.Severity;
import wayside.sizing.trace.Source;
import wayside.sizing.trace.Unit;

/** An inverter that is smaller than what hangs on it. One that was chosen for its loads never is. */
final class InverterSuspicions {
    private final EnergyBudget budget;
    private final double continuousW;
    private final double surgeW;

    private InverterSuspicions(EnergyBudget budget, InverterRating rating) {
        this.budget = budget;
        continuousW = rating.continuousW().value();
        surgeW = rating.surgeW().value();
    }

    /** One caution for each AC load that it can't run or can't start, and one for all of them together. */
    static List<Caution> of(EnergyBudget budget) {
        return budget.inverterRating()
                .map(rating -> new InverterSuspicions(budget, rating).collect())
                .orElse(List.of());
    }

    private List<Caution> collect() {
        List<Caution> cautions = new ArrayList<>();
        List<LoadDemand> loads = budget.demand().loads();
        int pieces = 0;
        for (LoadDemand load : loads) {
            if (load.isBehindTheInverter()) {
                alone(load).ifPresent(cautions::add);
                pieces += load.load().count();
            }
        }
        if (pieces > 1) {
            together().ifPresent(cautions::add);
        }
        return cautions;
    }

    private Optional<Caution> alone(LoadDemand load) {
        if (load.powerOfOneW().value() > continuousW) {
            String field = powerField(load);
            return Optional.of(warning(
                    load.load().at(field),
                    Message.of(
                            CautionCode.INVERTER_TOO_SMALL,
                            Parameter.text("load", load.load().name()),
                            Parameter.number("power", load.powerOfOneW()),
                            Parameter.number("continuous", continuousW, Unit.WATT))));
        }
        if (load.startOfOneW().value() > surgeW) {
            String field = startField(load);
            return Optional.of(warning(
                    load.load().at(field),
                    Message.of(
                            CautionCode.INVERTER_SURGE_TOO_SMALL,
                            Parameter.text("load", load.load().name()),
                            Parameter.number("start", load.startOfOneW()),
                            Parameter.number("surge", surgeW, Unit.WATT))));
        }
        return Optional.empty();
    }

    /** Where its start is stated; a load without a surge starts at its running power. */
    private static String startField(LoadDemand load) {
        return load.load()
                .surge()
                .map(surge -> surge instanceof Surge.Watts ? "surgeW" : "surgeFactor")
                .orElseGet(() -> powerField(load));
    }

    private static String powerField(LoadDemand load) {
        return load.load().power() instanceof RunningPower.Amps ? "currentA" : "powerW";
    }

    private Optional<Caution> together() {
        double runningW = budget.demand().ac().peakPowerW().value();
        double startingW = budget.demand().ac().surgePowerW().value();
        if (runningW <= continuousW && startingW <= surgeW) {
            return Optional.empty();
        }
        String field = runningW > continuousW ? "continuousW" : "surgeW";
        return Optional.of(warning(
                budget.inverter().at(field),
                Message.of(
                        CautionCode.NOT_ALL_AT_ONCE,
                        Parameter.number("running", runningW, Unit.WATT),
                        Parameter.number("starting", startingW, Unit.WATT),
                        Parameter.number("continuous", continuousW, Unit.WATT),
                        Parameter.number("surge", surgeW, Unit.WATT))));
    }

    private static Caution warning(String field, Message message) {
        return new Caution(message, Severity.WARNING, Source.commonPractice()).at(field);
    }
}
