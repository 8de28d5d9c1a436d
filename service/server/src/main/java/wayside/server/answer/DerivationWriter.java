package wayside.server.answer;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import wayside.sizing.trace.Computed;
import wayside.sizing.trace.Constant;
import wayside.sizing.trace.Convention;
import wayside.sizing.trace.Default;
import wayside.sizing.trace.Derivation;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Expression;
import wayside.sizing.trace.Given;
import wayside.sizing.trace.LookedUp;
import wayside.sizing.trace.Method;
import wayside.sizing.trace.NamedOperation;
import wayside.sizing.trace.Source;
import wayside.sizing.trace.Step;

/** A derivation as the answer shows it: sources once, inputs by the id of their step. */
final class DerivationWriter {
    private final Map<Source, Integer> sources = new LinkedHashMap<>();

    private DerivationWriter() {}

    static DerivationView write(Derivation derivation, Map<String, String> figures) {
        DerivationWriter writer = new DerivationWriter();
        List<StepView> steps = derivation.steps().stream().map(writer::step).toList();
        return new DerivationView(
                figures,
                steps,
                writer.sources.keySet().stream().map(DerivationWriter::source).toList());
    }

    private StepView step(Step step) {
        Derived value = step.value();
        if (value instanceof Computed computed) {
            return computed(step, computed.method());
        }
        if (value instanceof LookedUp lookedUp) {
            return read(step, "looked-up", null, lookedUp, null);
        }
        if (value instanceof Given given) {
            return read(step, "given", given.field(), null, null);
        }
        if (value instanceof Default open) {
            return read(step, "default", open.field(), null, open.reason());
        }
        return read(step, "convention", null, null, ((Convention) value).reason());
    }

    private StepView read(
            Step step, String kind, @Nullable String field, @Nullable LookedUp lookedUp, @Nullable String note) {
        Derived value = step.value();
        return new StepView(
                step.id(),
                kind,
                value.label(),
                value.value(),
                value.unit().symbol(),
                field,
                lookedUp == null ? null : lookedUp.table(),
                lookedUp == null ? null : lookedUp.row(),
                null,
                null,
                null,
                null,
                note,
                place(value.source()));
    }

    private StepView computed(Step step, Method method) {
        Derived value = step.value();
        Expression expression = method instanceof Expression evaluated ? evaluated : null;
        NamedOperation operation = method instanceof NamedOperation named ? named : null;
        return new StepView(
                step.id(),
                "computed",
                value.label(),
                value.value(),
                value.unit().symbol(),
                null,
                null,
                null,
                expression == null ? null : expression.text(),
                operation == null ? null : operation.kind().code(),
                expression == null || expression.constants().isEmpty() ? null : constants(expression),
                step.inputs().isEmpty() ? null : inputs(step),
                operation == null ? null : operation.note(),
                place(value.source()));
    }

    private static List<ConstantView> constants(Expression expression) {
        return expression.constants().stream().map(DerivationWriter::constant).toList();
    }

    private static ConstantView constant(Constant constant) {
        return new ConstantView(
                constant.symbol(),
                constant.quantity().value(),
                constant.quantity().unit().symbol());
    }

    private static List<StepInputView> inputs(Step step) {
        return step.inputs().stream()
                .map(input -> new StepInputView(input.symbol(), input.from()))
                .toList();
    }

    private int place(Source source) {
        Integer known = sources.putIfAbsent(source, sources.size());
        return known == null ? sources.size() - 1 : known;
    }

    private static SourceView source(Source source) {
        return new SourceView(
                source.basis().code(), source.title(), source.clause().orElse(null));
    }
}
