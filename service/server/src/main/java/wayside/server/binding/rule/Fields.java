package wayside.server.binding.rule;

import jakarta.validation.ConstraintValidatorContext;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import wayside.server.binding.Coded;

/** The fields that a rule is about, and which of them a record holds. */
record Fields(List<String> names) {
    static final Fields NONE = new Fields(List.of());

    private static final Map<Class<?>, Map<String, RecordComponent>> COMPONENTS = new ConcurrentHashMap<>();

    static Fields of(String... names) {
        return new Fields(List.of(names));
    }

    /** Those that are not null, in the rule's order. */
    List<String> given(Record record) {
        return names.stream().filter(name -> value(record, name) != null).toList();
    }

    /** Those numbers that are given, in the rule's order. */
    List<Double> numbers(Record record) {
        return values(record, Double.class).toList();
    }

    /** The codes of those enumerations that are given. */
    List<String> codes(Record record) {
        return values(record, Coded.class).map(Coded::code).toList();
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

    private <T> Stream<T> values(Record record, Class<T> type) {
        return names.stream()
                .map(name -> value(record, name))
                .filter(type::isInstance)
                .map(type::cast);
    }

    private static Map<String, RecordComponent> componentsByName(Class<?> type) {
        return Arrays.stream(type.getRecordComponents())
                .collect(Collectors.toMap(RecordComponent::getName, Function.identity()));
    }

    /** Of a field, or of one within another: {@code target/chanceOfRunningFlat}. */
    private static @Nullable Object value(Record record, String name) {
        int within = name.indexOf('/');
        if (within < 0) {
            return own(record, name);
        }
        return own(record, name.substring(0, within)) instanceof Record inner
                ? value(inner, name.substring(within + 1))
                : null;
    }

    private static @Nullable Object own(Record record, String name) {
        RecordComponent component = COMPONENTS
                .computeIfAbsent(record.getClass(), Fields::componentsByName)
                .get(name);
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
