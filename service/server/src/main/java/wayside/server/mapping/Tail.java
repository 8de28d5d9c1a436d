package wayside.server.mapping;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import wayside.server.api.AssumptionView;
import wayside.server.api.CautionView;
import wayside.server.api.StepView;
import wayside.sizing.trace.Answer;
import wayside.sizing.trace.Assumption;
import wayside.sizing.trace.Caution;
import wayside.sizing.trace.Derivation;

/**
 * What stands at the end of every answer that holds a figure: the reasons.
 *
 * @param derivation null when the client prefers an answer without it, and so is {@code steps}
 */
public record Tail(
        @Nullable List<StepView> derivation,
        List<AssumptionView> assumptions,
        List<CautionView> cautions,
        @Nullable Map<String, String> steps) {

    /** The tail of an answer whose figures have all been placed. */
    public static Tail of(Answer<?> answer, Figures figures) {
        if (!figures.areExplained()) {
            return new Tail(null, assumptions(Answer.assumptions(answer)), cautions(answer), null);
        }
        Derivation derivation = answer.derivation();
        return new Tail(
                new StepList(derivation.steps()),
                assumptions(Answer.assumptions(answer, derivation)),
                cautions(answer),
                figures.steps(derivation));
    }

    private static List<AssumptionView> assumptions(List<Assumption> assumptions) {
        return assumptions.stream().map(Tail::assumption).toList();
    }

    private static List<CautionView> cautions(Answer<?> answer) {
        return answer.cautions().stream().map(Tail::caution).toList();
    }

    private static AssumptionView assumption(Assumption assumption) {
        return new AssumptionView(
                assumption.field(),
                assumption.label(),
                assumption.value(),
                assumption.unit().map(unit -> unit.symbol()).orElse(null),
                assumption.reason(),
                assumption.source().basis().code(),
                assumption.source().title());
    }

    private static CautionView caution(Caution caution) {
        return new CautionView(
                caution.code(),
                caution.severity().code(),
                caution.text(),
                caution.source().basis().code(),
                caution.source().title(),
                caution.source().clause().orElse(null),
                caution.field().orElse(null));
    }
}
