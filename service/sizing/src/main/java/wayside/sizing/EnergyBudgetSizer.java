package wayside.sizing;

import wayside.sizing.brief.EnergyBrief;
import wayside.sizing.budget.EnergyBudget;
import wayside.sizing.trace.Answer;

/** The energy budget: from the load list to what the battery must deliver on a usual day. */
public final class EnergyBudgetSizer {
    private EnergyBudgetSizer() {}

    /** The budget with its reasons. Every field of the brief is used as given; defaults are named. */
    public static Answer<EnergyBudget> size(EnergyBrief brief) {
        EnergyBudget budget = EnergyBudget.of(brief);
        return new Answer<>(budget, budget.choices(), budget.cautions());
    }
}
