package wayside.server.answer;

import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import wayside.sizing.trace.Answer;
import wayside.sizing.trace.Assumption;
import wayside.sizing.trace.Caution;
import wayside.sizing.trace.Derivation;
import wayside.sizing.trace.Quantity;
import wayside.sizing.trace.Unit;

/**
 * What stands at the end of every answer that holds a figure: the reasons, and what made it.
 *
 * @param derivation null when the client asks for none
 */
public record Tail(
        List<AssumptionView> assumptions,
        List<CautionView> cautions,
        EngineView engine,
        @Nullable DerivationView derivation) {

    /** The tail of an answer whose figures have all been placed. */
    public static Tail of(Answer<?> answer, Figures figures) {
        return new Tail(
                Stream.concat(answer.choices().stream(), Derivation.assumptions(figures.values()).stream())
                        .map(Tail::assumption)
                        .toList(),
                answer.cautions().stream().map(Tail::caution).toList(),
                Engine.VIEW,
                figures.derivation());
    }

    private static AssumptionView assumption(Assumption assumption) {
        return new AssumptionView(
                assumption.field().orElse(null),
                assumption.label(),
                assumption.value(),
                assumption.quantity().map(Quantity::value).orElse(null),
                assumption
                        .quantity()
                        .map(Quantity::unit)
                        .filter(unit -> unit != Unit.COUNT)
                        .map(Unit::symbol)
                        .orElse(null),
                assumption.reason(),
                assumption.source().basis().code(),
                assumption.source().title());
    }

    private static CautionView caution(Caution caution) {
        MessageView message = MessageWriter.write(caution.message());
        return new CautionView(
                message.code(),
                caution.severity().code(),
                message.text(),
                message.parameters(),
                caution.source().basis().code(),
                caution.source().title(),
                caution.source().clause().orElse(null),
                caution.field().orElse(null));
    }
}
