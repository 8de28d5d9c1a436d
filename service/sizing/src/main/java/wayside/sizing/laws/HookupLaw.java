package wayside.sizing.laws;

import java.util.Optional;
import wayside.sizing.budget.EnergyBudget;
import wayside.sizing.budget.HookupRelief;
import wayside.sizing.journey.Journey;
import wayside.sizing.journey.JourneyStay;
import wayside.sizing.trace.Caution;
import wayside.sizing.trace.CautionCode;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Expression;
import wayside.sizing.trace.LawCode;
import wayside.sizing.trace.Parameter;
import wayside.sizing.trace.Severity;
import wayside.sizing.trace.Unit;

/**
 * AC loads that hang on a hookup against what it gives, {@code P_ac + P_only <= V I}; the shore charger takes what is left. More is
 * no fault of the system: whoever lives with it does not switch all of it on at once.
 */
final class HookupLaw {
    private static final Expression ASKED = Expression.definition("P = P_ac + P_only");

    private HookupLaw() {}

    /** Empty where nothing hangs on a hookup. */
    static Optional<Law> find(Journey journey) {
        return journey.highestDemandHookedUp().map(JourneyStay::budget).flatMap(budget -> budget.relief()
                .map(hookup -> law(budget, hookup)));
    }

    private static Law law(EnergyBudget budget, HookupRelief hookup) {
        Derived asked = ASKED.value(
                "AC loads: power while plugged in, all running",
                Unit.WATT,
                budget.demand().ac().peakPowerW().as("P_ac"),
                budget.demand().atAHookup().peakPowerW().as("P_only"));
        Derived allowed = hookup.hookup().limitW();
        Law law = Law.of(LawCode.HOOKUP_CARRIES, asked, allowed);
        return asked.value() <= allowed.value()
                ? law
                : law.with(Caution.commonPractice(
                        Severity.WARNING,
                        CautionCode.HOOKUP_OVERLOADED,
                        Parameter.number("asked", asked),
                        Parameter.number("allowed", allowed)));
    }
}
