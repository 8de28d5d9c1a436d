package wayside.sizing.budget;

import java.util.ArrayList;
import java.util.List;
import wayside.sizing.brief.Load;
import wayside.sizing.trace.Assumption;
import wayside.sizing.trace.Source;

/** What a load leaves open and is no number. */
final class LoadChoices {
    private LoadChoices() {}

    static List<Assumption> of(Load load) {
        List<Assumption> choices = new ArrayList<>();
        if (load.supply().isEmpty()) {
            choices.add(choice(load, "supply", "dc", "Runs straight off the battery, not behind an inverter"));
        }
        if (load.tier().isEmpty()) {
            choices.add(choice(load, "tier", "essential", "The trip counts as failed if it goes short"));
        }
        return choices;
    }

    private static Assumption choice(Load load, String field, String value, String reason) {
        return Assumption.choice(load.at(field), load.name() + ": " + field, value, reason, Source.commonPractice());
    }
}
