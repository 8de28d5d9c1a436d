package wayside.sizing.journey;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wayside.sizing.brief.EnergyBrief;
import wayside.sizing.budget.EnergyBudget;
import wayside.sizing.budget.MainsUse;
import wayside.sizing.ledger.DayUses;
import wayside.sizing.ledger.UsesByAir;
import wayside.sizing.solar.sky.SkyMonth;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Source;
import wayside.sizing.trace.Unit;

/**
 * What the days of a stay take where a load follows the temperature: budgets at five temperatures about the month's mean, days of
 * half a standard deviation's steps between them.
 */
final class DemandByAir {
    /** Budgets below and above the mean. */
    private static final int BUDGETS = 2;
    /** Days between two budgets. */
    private static final int DAYS = 4;
    /** Standard deviations from one budget to the next. */
    private static final double APART = 2;

    private DemandByAir() {}

    static boolean follows(EnergyBrief energy) {
        return energy.loads().stream().anyMatch(load -> !load.ambientDuty().isEmpty());
    }

    /** The days; the middle one is that of the mean. */
    static UsesByAir of(EnergyBrief energy, SkyMonth sky, MainsUse mains) {
        double meanC = sky.meanC().value();
        double apartK =
                APART * Math.hypot(sky.daySpreadK().value(), sky.meanErrorK().value());
        List<DayUses> days = new ArrayList<>();
        DayUses cold = at(energy, meanC - BUDGETS * apartK, mains);
        for (int budget = 1 - BUDGETS; budget <= BUDGETS; budget++) {
            DayUses warm = at(energy, meanC + budget * apartK, mains);
            for (int day = 0; day < DAYS; day++) {
                days.add(cold.towards(warm, (double) day / DAYS));
            }
            cold = warm;
        }
        days.add(cold);
        return new UsesByAir(days, meanC - BUDGETS * apartK, apartK / DAYS);
    }

    private static DayUses at(EnergyBrief energy, double airC, MainsUse mains) {
        Derived air = Derived.convention(
                "mean temperature of a day",
                airC,
                Unit.CELSIUS,
                "One of those that a day may have",
                Source.definition());
        return HourlyDemand.of(EnergyBudget.of(energy, air, "", mains, Optional.empty()));
    }
}
