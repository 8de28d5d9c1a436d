package wayside.server.binding;

import java.lang.invoke.MethodHandle;
import java.lang.invoke.MethodHandles;
import java.lang.invoke.MethodType;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.jspecify.annotations.Nullable;

/** A request record as the binder sees it: its fields by name, and how to make one. Read off the class once. */
final class RecordShape {
    private static final Map<Class<?>, RecordShape> KNOWN = new ConcurrentHashMap<>();

    private final Map<String, FieldShape> fields = new LinkedHashMap<>();
    private final MethodHandle constructor;

    private RecordShape(Class<?> type) {
        RecordComponent[] components = type.getRecordComponents();
        for (RecordComponent component : components) {
            fields.put(component.getName(), FieldShape.of(component, fields.size()));
        }
        Class<?>[] types =
                Arrays.stream(components).map(RecordComponent::getType).toArray(Class<?>[]::new);
        try {
            constructor = MethodHandles.publicLookup()
                    .findConstructor(type, MethodType.methodType(void.class, types))
                    .asType(MethodType.genericMethodType(types.length))
                    .asSpreader(Object[].class, types.length);
        } catch (ReflectiveOperationException e) {
            throw new IllegalArgumentException("No public constructor in " + type, e);
        }
    }

    static RecordShape of(Class<?> type) {
        RecordShape known = KNOWN.get(type);
        if (known == null) {
            // Not computeIfAbsent: a shape asks for the shapes of the records in it.
            known = new RecordShape(type);
            KNOWN.put(type, known);
        }
        return known;
    }

    Map<String, FieldShape> fields() {
        return fields;
    }

    /** A record of these values in the order of the fields; null where a value is absent or at fault. */
    Object make(@Nullable Object[] values) {
        try {
            return constructor.invokeExact(values);
        } catch (RuntimeException | Error e) {
            throw e;
        } catch (Throwable e) {
            throw new IllegalStateException("A request record must take any values", e);
        }
    }
}
