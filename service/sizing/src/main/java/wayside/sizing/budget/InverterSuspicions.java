package wayside.sizing.budget;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import wayside.sizing.brief.RunningPower;
import wayside.sizing.brief.Supply;
import wayside.sizing.brief.Surge;
import wayside.sizing.demand.LoadDemand;
import wayside.sizing.inverter.InverterRating;
import wayside.sizing.trace.Caution;
import wayside.sizing.trace.Severity;
import wayside.sizing.trace.Source;

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
        for (int i = 0; i < loads.size(); i++) {
            if (loads.get(i).load().supply() == Supply.AC) {
                alone(loads.get(i), "/loads/" + i).ifPresent(cautions::add);
                pieces += loads.get(i).load().quantity();
            }
        }
        if (pieces > 1) {
            together().ifPresent(cautions::add);
        }
        return cautions;
    }

    private Optional<Caution> alone(LoadDemand load, String path) {
        if (load.powerOfOneW() > continuousW) {
            String field = powerField(load);
            return Optional.of(warning(
                    "inverter-too-small",
                    path + field,
                    "\"%s\" draws %.0f W, and the inverter gives %.0f W: it cannot run it, not even alone.",
                    load.load().name(),
                    load.powerOfOneW(),
                    continuousW));
        }
        if (load.startOfOneW() > surgeW) {
            String field = startField(load);
            return Optional.of(warning(
                    "inverter-surge-too-small",
                    path + field,
                    "\"%s\" draws %.0f W when it starts, and the inverter gives %.0f W for a moment: it trips.",
                    load.load().name(),
                    load.startOfOneW(),
                    surgeW));
        }
        return Optional.empty();
    }

    /** Where its start is stated; a load without a surge starts at its running power. */
    private static String startField(LoadDemand load) {
        return load.load()
                .surge()
                .map(surge -> surge instanceof Surge.Watts ? "/surgeW" : "/surgeFactor")
                .orElseGet(() -> powerField(load));
    }

    private static String powerField(LoadDemand load) {
        return load.load().power() instanceof RunningPower.Amps ? "/currentA" : "/powerW";
    }

    private Optional<Caution> together() {
        double runningW = budget.demand().ac().peakPowerW().value();
        double startingW = budget.demand().ac().surgePowerW().value();
        if (runningW <= continuousW && startingW <= surgeW) {
            return Optional.empty();
        }
        String field = runningW > continuousW ? "/inverter/continuousW" : "/inverter/surgeW";
        return Optional.of(warning(
                "not-all-at-once",
                budget.path() + field,
                "All AC loads together draw %.0f W and %.0f W when the hardest starts; the inverter gives %.0f W and %.0f W."
                        + " Never run them all at once.",
                runningW,
                startingW,
                continuousW,
                surgeW));
    }

    private static Caution warning(String code, String field, String text, Object... figures) {
        return new Caution(code, Severity.WARNING, String.format(Locale.ROOT, text, figures), Source.commonPractice())
                .at(field);
    }
}
