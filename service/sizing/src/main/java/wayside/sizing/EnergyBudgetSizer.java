package wayside.sizing;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import wayside.sizing.brief.EnergyBrief;
import wayside.sizing.budget.EnergyBudget;
import wayside.sizing.demand.Demand;
import wayside.sizing.demand.LoadDemand;
import wayside.sizing.inverter.InverterLoss;
import wayside.sizing.inverter.InverterRating;
import wayside.sizing.trace.Answer;
import wayside.sizing.trace.Caution;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Formula;
import wayside.sizing.trace.Severity;
import wayside.sizing.trace.Source;
import wayside.sizing.trace.Unit;

/** The energy budget: from the load list to what the battery must deliver on a usual day. */
public final class EnergyBudgetSizer {
    /** Outlets, monitor, alarms: about 5 W left on all day. Common practice, no source. */
    private static final double STANDBY_W = 5;

    private static final double AMBIENT_C = 25;

    /** Idle loss above this share of the day's total is worth a word. */
    private static final double NOTABLE_IDLE_SHARE = 0.1;

    private EnergyBudgetSizer() {}

    /** The budget with its reasons. Every field of the brief is used as given; defaults are named. */
    public static Answer<EnergyBudget> size(EnergyBrief brief) {
        EnergyBudget budget = budget(brief, ambient(brief.ambientC()), "");
        return new Answer<>(budget, figures(budget), List.of(), cautions(budget));
    }

    /**
     * The budget as a chapter of a larger answer.
     *
     * @param ambientC air temperature for the fridge's duty [C]
     * @param path JSON Pointer of the object that holds {@code busVoltageV}, {@code inverter} and {@code standbyW}
     */
    static EnergyBudget budget(EnergyBrief brief, Derived ambientC, String path) {
        Demand demand = Demand.of(brief.loads(), ambientC);
        Optional<InverterRating> rating = demand.hasAc()
                ? Optional.of(InverterRating.of(demand.ac(), brief.inverter(), path + "/inverter"))
                : Optional.empty();
        Optional<InverterLoss> loss = rating.map(r -> InverterLoss.of(demand, brief.inverter(), r, path + "/inverter"));
        Derived standby = standby(brief, path);
        return new BudgetTotals(demand, rating, loss, standby, busVoltage(brief, path), path).budget();
    }

    private static Derived ambient(OptionalDouble given) {
        return given.isPresent()
                ? Derived.given("ambient temperature", given.getAsDouble(), Unit.CELSIUS, "/ambientC")
                : Derived.assumed(
                        "ambient temperature",
                        AMBIENT_C,
                        Unit.CELSIUS,
                        "/ambientC",
                        "A warm day in a parked vehicle",
                        Source.commonPractice());
    }

    private static Derived busVoltage(EnergyBrief brief, String path) {
        return brief.busVoltageV().isPresent()
                ? Derived.given(
                        "nominal bus voltage", brief.busVoltageV().getAsDouble(), Unit.VOLT, path + "/busVoltageV")
                : Derived.assumed(
                        "nominal bus voltage",
                        12,
                        Unit.VOLT,
                        path + "/busVoltageV",
                        "What most camper loads are made for",
                        Source.commonPractice());
    }

    private static Derived standby(EnergyBrief brief, String path) {
        Derived power = brief.standbyW().isPresent()
                ? Derived.given("standby power", brief.standbyW().getAsDouble(), Unit.WATT, path + "/standbyW")
                : Derived.assumed(
                        "standby power",
                        STANDBY_W,
                        Unit.WATT,
                        path + "/standbyW",
                        "Outlets, battery monitor and alarms draw about this much day and night",
                        Source.commonPractice());
        Derived hours = Derived.assumed(
                "hours of a day", 24, Unit.HOUR, path + "/standbyW", "Standby never sleeps", Source.definition());
        return Derived.computed(
                "standby energy",
                power.value() * 24,
                Unit.WATT_HOUR,
                Formula.definition("E = P h"),
                power.as("P"),
                hours.as("h"));
    }

    /** The traced figures of a budget in reading order. */
    static List<Derived> figures(EnergyBudget budget) {
        List<Derived> figures = new ArrayList<>();
        for (LoadDemand load : budget.demand().loads()) {
            figures.add(load.dailyEnergyWh());
        }
        figures.addAll(List.of(
                budget.dailyLoadWh(),
                budget.dailyLossWh(),
                budget.dailyTotalWh(),
                budget.dailyTotalAh(),
                budget.demand().dc().peakPowerW(),
                budget.demand().dc().surgePowerW(),
                budget.dcPeakA()));
        if (budget.demand().hasAc()) {
            figures.addAll(List.of(
                    budget.demand().ac().peakPowerW(), budget.demand().ac().surgePowerW(), budget.acPeakA()));
        }
        budget.loads().forEach(load -> figures.add(load.share()));
        return figures;
    }

    /** What the budget itself gives cause to say. */
    static List<Caution> cautions(EnergyBudget budget) {
        List<Caution> cautions = new ArrayList<>();
        budget.inverterLoss().ifPresent(loss -> {
            double idle = loss.idleWh().value();
            if (idle > NOTABLE_IDLE_SHARE * budget.dailyTotalWh().value()) {
                cautions.add(new Caution(
                        "inverter-idle",
                        Severity.NOTE,
                        String.format(
                                Locale.ROOT,
                                "The inverter alone takes about %.0f Wh a day standing by. Switch it off when nothing"
                                        + " is plugged in, or run small things from 12 V.",
                                idle),
                        Source.commonPractice()));
            }
        });
        return cautions;
    }
}
