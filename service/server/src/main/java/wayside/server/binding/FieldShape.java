package wayside.server.binding;

import jakarta.validation.constraints.Size;
import java.lang.reflect.AnnotatedElement;
import java.lang.reflect.Field;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * A field of a request record.
 *
 * @param index among its record's fields
 * @param kind of its value
 * @param required whether it must be given
 * @param accepted what it takes, in words
 * @param element of a list: what its elements are
 * @param type record or enumeration
 * @param codes of an enumeration
 * @param longest list that is taken
 * @param bounds what it takes, in figures
 */
record FieldShape(
        int index,
        FieldKind kind,
        boolean required,
        String accepted,
        @Nullable FieldShape element,
        Class<?> type,
        Map<String, Object> codes,
        int longest,
        Bounds bounds) {

    static FieldShape of(RecordComponent component, int index) {
        Field field = field(component);
        boolean required = !component.getAnnotatedType().isAnnotationPresent(Nullable.class);
        if (component.getType() == List.class) {
            Class<?> type = (Class<?>) ((ParameterizedType) component.getGenericType()).getActualTypeArguments()[0];
            FieldShape element = plain(type, null, 0, true);
            Size size = field.getAnnotation(Size.class);
            return new FieldShape(
                    index,
                    FieldKind.LIST,
                    required,
                    Accepted.list(field, element),
                    element,
                    type,
                    Map.of(),
                    size == null ? Integer.MAX_VALUE : size.max(),
                    Bounds.of(field));
        }
        return plain(component.getType(), field, index, required);
    }

    private static FieldShape plain(Class<?> type, @Nullable AnnotatedElement annotated, int index, boolean required) {
        FieldKind kind = FieldKind.of(type);
        Map<String, Object> codes = kind == FieldKind.CODE ? codes(type) : Map.of();
        Bounds bounds =
                kind == FieldKind.CODE ? new Bounds(null, null, List.copyOf(codes.keySet())) : Bounds.of(annotated);
        return new FieldShape(
                index,
                kind,
                required,
                Accepted.one(kind, annotated, type),
                null,
                type,
                codes,
                Integer.MAX_VALUE,
                bounds);
    }

    private static Map<String, Object> codes(Class<?> type) {
        return Arrays.stream(type.getEnumConstants())
                .map(Coded.class::cast)
                .collect(Collectors.toMap(Coded::code, Function.identity(), (one, other) -> one, LinkedHashMap::new));
    }

    private static Field field(RecordComponent component) {
        try {
            return component.getDeclaringRecord().getDeclaredField(component.getName());
        } catch (NoSuchFieldException e) {
            throw new IllegalStateException("A record without its own field", e);
        }
    }
}
