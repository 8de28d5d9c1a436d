package wayside.server.binding;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import wayside.server.problem.Fault;
import wayside.server.problem.FaultCode;
import wayside.server.problem.Faults;

/**
 * Makes a request record of a tree. Nothing is coerced; what does not fit is a fault and becomes null, so that the rest
 * can still be looked at.
 */
final class RecordBinder {
    private final Faults faults;
    private final KnownPlaces places;

    /** @param root record of the whole request */
    RecordBinder(Faults faults, Class<?> root) {
        this.faults = faults;
        this.places = KnownPlaces.of(root);
    }

    /** The whole request; null when the tree is no object, or one that is only wrapped around the request. */
    @Nullable
    Object request(JsonNode tree, Class<?> type) {
        Map<String, FieldShape> fields = RecordShape.of(type).fields();
        if (tree.isObject() && tree.size() == 1) {
            Map.Entry<String, JsonNode> only = tree.properties().iterator().next();
            boolean inside =
                    only.getValue().properties().stream().anyMatch(member -> fields.containsKey(member.getKey()));
            if (inside && !fields.containsKey(only.getKey())) {
                return fault(
                        "/" + Pointers.escape(only.getKey()),
                        FaultCode.WRAPPED,
                        "Send what is in this object, without the object around it.",
                        only.getValue(),
                        Accepted.one(FieldKind.OBJECT, null, type),
                        Bounds.NONE);
            }
        }
        return record(tree, type, "");
    }

    /** The record, or null when the tree is no object. */
    private @Nullable Object record(JsonNode node, Class<?> type, String pointer) {
        RecordShape shape = RecordShape.of(type);
        if (!node.isObject()) {
            return fault(
                    pointer,
                    FaultCode.WRONG_TYPE,
                    "This must be an object.",
                    node,
                    Accepted.one(FieldKind.OBJECT, null, type),
                    Bounds.NONE);
        }
        @Nullable Object[] values = new @Nullable Object[shape.fields().size()];
        for (Map.Entry<String, JsonNode> member : node.properties()) {
            FieldShape field = shape.fields().get(member.getKey());
            String child = pointer + "/" + Pointers.escape(member.getKey());
            if (field == null) {
                unknown(pointer, member.getKey(), member.getValue(), shape);
            } else {
                values[field.index()] = value(member.getValue(), field, child);
            }
        }
        shape.fields().forEach((name, field) -> {
            if (field.required() && !node.has(name) && !faults.blames(pointer + "/" + name)) {
                fault(
                        pointer + "/" + name,
                        FaultCode.MISSING,
                        "This field is missing.",
                        null,
                        field.accepted(),
                        field.bounds());
            }
        });
        return shape.make(values);
    }

    private @Nullable Object value(JsonNode node, FieldShape field, String pointer) {
        return switch (field.kind()) {
            case TEXT -> node.isTextual() ? node.textValue() : wrong(pointer, node, field);
            case NUMBER -> node.isNumber() ? (Object) node.doubleValue() : wrong(pointer, node, field);
            case INTEGER -> isWhole(node) ? (Object) node.intValue() : wrong(pointer, node, field);
            case BOOLEAN -> node.isBoolean() ? (Object) node.booleanValue() : wrong(pointer, node, field);
            case CODE -> code(node, field, pointer);
            case OBJECT -> node.isObject() ? record(node, field.type(), pointer) : wrong(pointer, node, field);
            case LIST -> node.isArray() ? list(node, field, pointer) : wrong(pointer, node, field);
        };
    }

    /** JSON has one kind of number: 2.0 is as whole as 2. */
    private static boolean isWhole(JsonNode node) {
        return node.isNumber()
                && node.doubleValue() == Math.rint(node.doubleValue())
                && Math.abs(node.doubleValue()) <= Integer.MAX_VALUE;
    }

    private @Nullable Object code(JsonNode node, FieldShape field, String pointer) {
        Object constant = node.isTextual() ? field.codes().get(node.textValue()) : null;
        if (constant != null) {
            return constant;
        }
        Optional<String> nearest = node.isTextual()
                ? NearestName.of(node.textValue(), field.codes().keySet())
                : Optional.empty();
        faults.add(pointer, () -> Fault.of(
                        pointer, FaultCode.UNKNOWN_CODE, "This value is not known" + meant(nearest) + ".")
                .received(Received.text(node), Received.value(node))
                .accepted(field.accepted())
                .allowed(field.bounds().allowed())
                .nearest(nearest.orElse(null))
                .done());
        return null;
    }

    private @Nullable Object list(JsonNode node, FieldShape field, String pointer) {
        FieldShape element = field.element();
        if (element == null || node.size() > field.longest()) {
            // Its elements are not looked at: a list far too long would only bury the fault.
            return fault(
                    pointer, FaultCode.WRONG_LENGTH, "This list is too long.", node, field.accepted(), field.bounds());
        }
        List<@Nullable Object> values = new ArrayList<>(node.size());
        for (int i = 0; i < node.size(); i++) {
            values.add(value(node.get(i), element, pointer + "/" + i));
        }
        return Collections.unmodifiableList(values);
    }

    private void unknown(String record, String name, JsonNode value, RecordShape shape) {
        String pointer = record + "/" + Pointers.escape(name);
        if (faults.isFull()) {
            faults.countOnly(1);
            return;
        }
        Suggestion suggestion = places.suggestion(name, record, shape);
        faults.add(pointer, () -> Fault.of(
                        pointer, FaultCode.UNKNOWN_FIELD, "This field is not known here" + suggestion.words() + ".")
                .received(Received.text(value), Received.value(value))
                .accepted("one of " + String.join(", ", shape.fields().keySet()))
                .allowed(List.copyOf(shape.fields().keySet()))
                .nearest(suggestion.nearest())
                .meant(suggestion.nearest() == null ? suggestion.meant() : null)
                .times(factor(suggestion), offset(suggestion))
                .knownAt(suggestion.knownAt())
                .done());
        if (suggestion.meant() != null) {
            faults.suspect(record + "/" + suggestion.meant());
        }
    }

    private static @Nullable Double factor(Suggestion suggestion) {
        return suggestion.change() == null
                ? null
                : Double.valueOf(suggestion.change().factor());
    }

    private static @Nullable Double offset(Suggestion suggestion) {
        return suggestion.change() == null
                ? null
                : Double.valueOf(suggestion.change().offset());
    }

    private static String meant(Optional<String> nearest) {
        return nearest.map(name -> "; perhaps " + name + " is meant").orElse("");
    }

    private @Nullable Object wrong(String pointer, JsonNode node, FieldShape field) {
        if (node.isNull()) {
            return fault(
                    pointer,
                    FaultCode.NULL,
                    "null is no value here; leave the field out.",
                    node,
                    field.accepted(),
                    field.bounds());
        }
        boolean broken = field.kind() == FieldKind.INTEGER && node.isNumber();
        return fault(
                pointer,
                broken ? FaultCode.NOT_WHOLE : FaultCode.WRONG_TYPE,
                broken ? "This must be a whole number." : "This is of the wrong type; nothing is converted.",
                node,
                field.accepted(),
                field.bounds());
    }

    private @Nullable Object fault(
            String pointer, FaultCode code, String detail, @Nullable JsonNode node, String accepted, Bounds bounds) {
        faults.add(pointer, () -> Fault.of(pointer, code, detail)
                .received(Received.text(node), Received.value(node))
                .accepted(accepted)
                .between(bounds.minimum(), bounds.maximum())
                .allowed(bounds.allowed())
                .done());
        return null;
    }
}
