package wayside.server.contract;

import io.swagger.v3.oas.models.media.JsonSchema;
import io.swagger.v3.oas.models.media.Schema;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.Max;
import jakarta.validation.constraints.Min;
import jakarta.validation.constraints.Size;
import java.lang.reflect.Field;
import java.lang.reflect.RecordComponent;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import wayside.server.answer.OpenCodes;
import wayside.server.binding.rule.AtLeastOneOf;
import wayside.server.binding.rule.AtMostOneOf;
import wayside.server.binding.rule.ExactlyOneOf;
import wayside.server.binding.rule.OneOfNumbers;
import wayside.server.binding.rule.OnlyWith;
import wayside.server.binding.rule.ZeroOrFrom;

/**
 * Says in a schema what Swagger-core does not read off our annotations, or reads otherwise than the validator: what is
 * required, that unknown fields are refused, open ends of ranges, and the rules between fields.
 */
final class SchemaRules {
    private SchemaRules() {}

    static void complete(Class<?> record, Schema<?> schema, boolean closed) {
        List<String> required = new ArrayList<>();
        for (RecordComponent component : record.getRecordComponents()) {
            if (!component.getAnnotatedType().isAnnotationPresent(Nullable.class)) {
                required.add(component.getName());
            }
            Schema<?> property = schema.getProperties().get(component.getName());
            if (property != null && property.get$ref() == null) {
                ranges(field(component), property);
                codes(component.getAnnotation(OpenCodes.class), property);
            }
        }
        schema.setRequired(required.isEmpty() ? null : required);
        if (closed) {
            schema.setAdditionalProperties(false);
        }
        between(record, schema);
    }

    private static void ranges(Field field, Schema<?> property) {
        property.setFormat(format(field.getType()));
        DecimalMin low = field.getAnnotation(DecimalMin.class);
        if (low != null) {
            property.setExclusiveMinimum(null);
            property.setMinimum(new BigDecimal(low.value()));
        }
        ZeroOrFrom zeroOr = field.getAnnotation(ZeroOrFrom.class);
        if (zeroOr != null) {
            property.setMinimum(BigDecimal.ZERO);
            property.setNot(new JsonSchema()
                    .exclusiveMinimumValue(BigDecimal.ZERO)
                    .exclusiveMaximumValue(new BigDecimal(zeroOr.value())));
        }
        DecimalMax high = field.getAnnotation(DecimalMax.class);
        if (high != null) {
            property.setExclusiveMaximum(null);
            property.setMaximum(new BigDecimal(high.value()));
        }
        Min least = field.getAnnotation(Min.class);
        Max most = field.getAnnotation(Max.class);
        if (least != null && most != null) {
            property.setMinimum(BigDecimal.valueOf(least.value()));
            property.setMaximum(BigDecimal.valueOf(most.value()));
        }
        sizes(field.getAnnotation(Size.class), property);
        OneOfNumbers few = field.getAnnotation(OneOfNumbers.class);
        if (few != null) {
            set(property, few);
        }
    }

    /** Without it some generators read a number as one of single precision. */
    private static @Nullable String format(Class<?> type) {
        if (type == Double.class || type == double.class) {
            return "double";
        }
        return type == Integer.class || type == int.class ? "int32" : null;
    }

    private static void codes(@Nullable OpenCodes codes, Schema<?> property) {
        if (codes == null) {
            return;
        }
        property.addExtension("x-extensible-enum", CodeLists.codes(codes.value()));
        Map<String, Object> messages = CodeLists.messages(codes.value());
        if (!messages.isEmpty()) {
            property.addExtension("x-messages", messages);
        }
    }

    private static void sizes(@Nullable Size size, Schema<?> property) {
        if (size == null) {
            return;
        }
        boolean list = property.getItems() != null;
        property.setMinItems(list ? size.min() : null);
        property.setMaxItems(list ? size.max() : null);
        property.setMinLength(list ? null : size.min());
        property.setMaxLength(list ? null : size.max());
    }

    @SuppressWarnings("unchecked")
    private static void set(Schema<?> property, OneOfNumbers few) {
        ((Schema<Object>) property)
                .setEnum(Arrays.stream(few.value())
                        .<Object>mapToObj(value ->
                                BigDecimal.valueOf(value).stripTrailingZeros().toPlainString())
                        .map(text -> (Object) new BigDecimal(text.toString()))
                        .toList());
    }

    @SuppressWarnings({"rawtypes", "unchecked"})
    private static void between(Class<?> record, Schema<?> schema) {
        List<Schema> all = new ArrayList<>();
        for (ExactlyOneOf rule : record.getAnnotationsByType(ExactlyOneOf.class)) {
            all.add(new JsonSchema().oneOf(each(rule.value())));
        }
        for (AtLeastOneOf rule : record.getAnnotationsByType(AtLeastOneOf.class)) {
            all.add(new JsonSchema().anyOf(each(rule.value())));
        }
        for (AtMostOneOf rule : record.getAnnotationsByType(AtMostOneOf.class)) {
            all.add(new JsonSchema().not(new JsonSchema().required(List.of(rule.value()))));
        }
        for (OnlyWith rule : record.getAnnotationsByType(OnlyWith.class)) {
            if (rule.groups().length > 0) {
                // Holds for one of the ways to ask only, and the schema is of all: the descriptions say it.
                continue;
            }
            if (!rule.is().isEmpty()) {
                all.add(onlyWithCode(rule));
            } else if (rule.beside().contains("/")) {
                all.add(onlyWithInner(rule));
            } else {
                dependent(rule, schema);
            }
        }
        if (!all.isEmpty()) {
            schema.setAllOf(all);
        }
    }

    @SuppressWarnings("rawtypes")
    private static List<Schema> each(String... names) {
        return Arrays.stream(names)
                .<Schema>map(name -> new JsonSchema().required(List.of(name)))
                .toList();
    }

    private static void dependent(OnlyWith rule, Schema<?> schema) {
        Map<String, List<String>> needs = schema.getDependentRequired() == null
                ? new LinkedHashMap<>()
                : new LinkedHashMap<>(schema.getDependentRequired());
        for (String name : rule.value()) {
            needs.put(name, List.of(rule.beside()));
        }
        if (rule.needed()) {
            needs.put(rule.beside(), List.of(rule.value()));
        }
        schema.setDependentRequired(needs);
    }

    private static Schema<?> onlyWithCode(OnlyWith rule) {
        Schema<?> has = new JsonSchema().required(List.of(rule.beside()));
        has.addProperty(rule.beside(), new JsonSchema()._const(rule.is()));
        Schema<?> all = new JsonSchema().required(List.of(rule.value()));
        Schema<?> none = new JsonSchema().not(new JsonSchema().anyOf(each(rule.value())));
        return new JsonSchema()._if(has).then(rule.needed() ? all : null)._else(none);
    }

    private static Schema<?> onlyWithInner(OnlyWith rule) {
        return new JsonSchema()._if(new JsonSchema().anyOf(each(rule.value()))).then(within(rule.beside()));
    }

    /** That a field is there, however deep. */
    private static Schema<?> within(String path) {
        int end = path.indexOf('/');
        if (end < 0) {
            return new JsonSchema().required(List.of(path));
        }
        Schema<?> outer = new JsonSchema().required(List.of(path.substring(0, end)));
        outer.addProperty(path.substring(0, end), within(path.substring(end + 1)));
        return outer;
    }

    private static Field field(RecordComponent component) {
        try {
            return component.getDeclaringRecord().getDeclaredField(component.getName());
        } catch (NoSuchFieldException e) {
            throw new IllegalStateException("A record without its own field", e);
        }
    }
}
