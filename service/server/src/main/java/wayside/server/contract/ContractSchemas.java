package wayside.server.contract;

import io.swagger.v3.core.converter.AnnotatedType;
import io.swagger.v3.core.converter.ModelConverters;
import io.swagger.v3.core.converter.ResolvedSchema;
import io.swagger.v3.oas.models.media.Schema;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/** The schemas of the contract, read off the records. */
final class ContractSchemas {
    @SuppressWarnings("rawtypes")
    private final Map<String, Schema> schemas = new TreeMap<>();

    private final Set<Class<?>> seen = new HashSet<>();

    /**
     * Adds a record and every record in it.
     *
     * @param closed whether unknown fields are refused, as in a request
     * @return a reference to its schema
     */
    Schema<?> add(Class<?> record, boolean closed) {
        ResolvedSchema resolved =
                ModelConverters.getInstance(true).resolveAsResolvedSchema(new AnnotatedType(record).resolveAsRef(true));
        resolved.referencedSchemas.forEach(schemas::putIfAbsent);
        complete(record, closed);
        return new Schema<>().$ref("#/components/schemas/" + name(record));
    }

    @SuppressWarnings("rawtypes")
    Map<String, Schema> all() {
        return schemas;
    }

    private void complete(Class<?> record, boolean closed) {
        if (!record.isRecord() || !seen.add(record)) {
            return;
        }
        Schema<?> schema = schemas.get(name(record));
        if (schema == null) {
            throw new IllegalStateException("No schema " + name(record) + " came of " + record);
        }
        SchemaRules.complete(record, schema, closed);
        for (RecordComponent component : record.getRecordComponents()) {
            complete(element(component.getGenericType()), closed);
        }
    }

    private static Class<?> element(Type type) {
        if (type instanceof ParameterizedType generic) {
            Type[] arguments = generic.getActualTypeArguments();
            return element(arguments[arguments.length - 1]);
        }
        return (Class<?>) type;
    }

    private static String name(Class<?> record) {
        var annotation = record.getAnnotation(io.swagger.v3.oas.annotations.media.Schema.class);
        return annotation == null || annotation.name().isEmpty() ? record.getSimpleName() : annotation.name();
    }
}
