package wayside.sizing;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import wayside.sizing.trace.Answer;
import wayside.sizing.trace.Assumption;
import wayside.sizing.trace.Derivation;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Step;

/** The traced values that a result holds, wherever in it they stand. */
final class TracedValues {
    private final List<Derived> found = new ArrayList<>();
    private final Set<Object> seen = Collections.newSetFromMap(new IdentityHashMap<>());

    private TracedValues() {}

    /** Through the components of records, through what is optional, and along lists; each object once. */
    static List<Derived> of(Object result) {
        TracedValues values = new TracedValues();
        values.visit(result);
        return values.found;
    }

    /** All that an answer says was not given, choices and numbers. */
    static List<Assumption> assumptions(Answer<?> answer) {
        return Stream.concat(answer.choices().stream(), Derivation.of(of(answer.result())).assumptions().stream())
                .toList();
    }

    /** Each figure has a step of its label and value, and ids are unique. */
    static void assertEachIsAStep(List<Derived> figures) {
        Derivation derivation = Derivation.of(figures);
        Map<String, Derived> steps = derivation.steps().stream().collect(Collectors.toMap(Step::id, Step::value));
        assertThat(figures).isNotEmpty().allSatisfy(figure -> assertThat(steps.get(derivation.stepId(figure)))
                .isNotNull()
                .extracting(Derived::label, Derived::quantity)
                .containsExactly(figure.label(), figure.quantity()));
    }

    private void visit(Object thing) {
        if (!seen.add(thing)) {
            return;
        }
        if (thing instanceof Derived figure) {
            found.add(figure);
        } else if (thing instanceof Optional<?> maybe) {
            maybe.ifPresent(this::visit);
        } else if (thing instanceof Iterable<?> list) {
            list.forEach(this::visit);
        } else if (thing instanceof Record) {
            for (RecordComponent component : thing.getClass().getRecordComponents()) {
                visit(read(component, thing));
            }
        }
    }

    private static Object read(RecordComponent component, Object owner) {
        try {
            component.getAccessor().setAccessible(true);
            return component.getAccessor().invoke(owner);
        } catch (ReflectiveOperationException e) {
            throw new LinkageError(component + " can't be read", e);
        }
    }
}
