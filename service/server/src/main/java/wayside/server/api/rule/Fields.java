package wayside.server.api.rule;

import jakarta.validation.ConstraintValidatorContext;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import wayside.server.api.Coded;

/** The fields that a rule is about, and which of them a record holds. */
record Fields(List<String> names) {
    static final Fields NONE = new Fields(List.of());

    private static final Map<Class<?>, Map<String, RecordComponent>> COMPONENTS = new ConcurrentHashMap<>();

    static Fields of(String... names) {
        return new Fields(List.of(names));
    }

    /** Those that are not null, in the rule's order. */
    List<String> given(Record record) {
        Map<String, RecordComponent> components =
                COMPONENTS.computeIfAbsent(record.getClass(), Fields::componentsByName);
        return names.stream()
                .filter(name -> value(record, components.get(name)) != null)
                .toList();
    }

    /** Those numbers that are given, in the rule's order. */
    List<Double> numbers(Record record) {
        Map<String, RecordComponent> components =
                COMPONENTS.computeIfAbsent(record.getClass(), Fields::componentsByName);
        return names.stream()
                .map(name -> value(record, components.get(name)))
                .filter(Double.class::isInstance)
                .map(Double.class::cast)
                .toList();
    }

    /** The codes of those enumerations that are given. */
    List<String> codes(Record record) {
        Map<String, RecordComponent> components =
                COMPONENTS.computeIfAbsent(record.getClass(), Fields::componentsByName);
        return names.stream()
                .map(name -> value(record, components.get(name)))
                .filter(Coded.class::isInstance)
                .map(code -> ((Coded) code).code())
                .toList();
    }

    String either() {
        return String.join(" or ", names);
    }

    /** Reports the fault on one field, or on the record itself; always false, for the validator to return. */
    boolean blame(@Nullable String field, String accepted, ConstraintValidatorContext context) {
        context.disableDefaultConstraintViolation();
        var violation = context.buildConstraintViolationWithTemplate(accepted);
        if (field == null) {
            violation.addConstraintViolation();
        } else {
            violation.addPropertyNode(field).addConstraintViolation();
        }
        return false;
    }

    private static Map<String, RecordComponent> componentsByName(Class<?> type) {
        return Arrays.stream(type.getRecordComponents())
                .collect(Collectors.toMap(RecordComponent::getName, Function.identity()));
    }

    private static @Nullable Object value(Record record, @Nullable RecordComponent component) {
        if (component == null) {
            throw new IllegalStateException("A rule on " + record.getClass() + " names a field that it doesn't have");
        }
        try {
            return component.getAccessor().invoke(record);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException("Cannot read " + component, e);
        }
    }
}
