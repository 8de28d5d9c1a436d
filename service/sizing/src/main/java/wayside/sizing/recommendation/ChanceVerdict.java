package wayside.sizing.recommendation;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wayside.sizing.brief.Objective;
import wayside.sizing.brief.SystemBrief;
import wayside.sizing.brief.Target;
import wayside.sizing.chance.ByChance;
import wayside.sizing.endurance.EnduranceChoices;
import wayside.sizing.system.SizedSystem;
import wayside.sizing.trace.Assumption;
import wayside.sizing.trace.Caution;
import wayside.sizing.trace.Source;

/** A system judged by its chance of running flat: what that changes in its choices and cautions. */
record ChanceVerdict(SizedSystem system, ByChance found) {
    List<Assumption> choices() {
        List<Assumption> choices = new ArrayList<>(system.choices());
        SystemBrief brief = system.site().brief();
        Target target = brief.target();
        if (target.objective().filter(wanted -> wanted == found.objective()).isEmpty()) {
            choices.add(chosenBy(target));
        }
        choices.add(Assumption.convention(
                "what the chance is reckoned with",
                "the loads as listed, a bank at the end of its life",
                "A new bank is surer; loads to come have no room in it",
                Source.commonPractice()));
        EnduranceChoices.ofTravel(brief.trip(), brief.loads()).forEach(choices::add);
        choices.addAll(EnduranceChoices.ofDays(brief.sampling()));
        return choices;
    }

    /** Left open, or by price where a price is missing: giving that one is the way to it. */
    private Assumption chosenBy(Target target) {
        boolean byPrice = target.objective().equals(Optional.of(Objective.PRICE));
        String price = target.bankPricePerWh().isEmpty() ? "bankPricePerWh" : "arrayPricePerW";
        return Assumption.choice(
                target.at(byPrice ? price : "objective"),
                "bank and array chosen by",
                found.objective().code(),
                byPrice
                        ? "Prices are yours to give, for a Wh of battery and for a W of panel; without them the lightest pair is"
                                + " taken"
                        : "Of the pairs that are sure enough, the lightest one whose panels fit the roof",
                Source.commonPractice());
    }

    /** The fifth in hand is of the other way of sizing. */
    List<Caution> cautions() {
        return system.cautions().stream()
                .filter(caution -> !caution.code().equals("growth"))
                .toList();
    }
}
