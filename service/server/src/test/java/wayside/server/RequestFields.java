package wayside.server;

import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.BooleanNode;
import com.fasterxml.jackson.databind.node.IntNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Map;

/** Gives a field of a request that was left open, with a figure that the contract has as its example. */
final class RequestFields {
    /** Where the contract has no example: enough for a start surge of any load of the examples. */
    private static final int LARGE = 2000;

    private RequestFields() {}

    /**
     * The same request with this field; a field that may not stand beside it is taken out, one it needs is given.
     * Unchanged where it may not stand without another that is not there.
     */
    static ObjectNode give(JsonNode schema, ObjectNode request, String field) {
        ObjectNode given = request.deepCopy();
        JsonPointer pointer = JsonPointer.compile(field);
        ObjectNode parent = parent(given, pointer.head());
        String name = pointer.last().getMatchingProperty();
        JsonNode parents =
                ContractSchema.find(schema, pointer.head().toString()).orElseThrow();
        for (JsonNode need : parents.path("dependentRequired").path(name)) {
            if (!parent.has(need.asText())) {
                return request;
            }
        }
        for (JsonNode rule : parents.path("allOf")) {
            JsonNode never = rule.at("/not/required");
            if (contains(never, name)) {
                never.forEach(other -> takeOut(parent, parents, other.asText()));
            }
        }
        JsonNode value = value(ContractSchema.find(schema, field).orElseThrow());
        parent.set(name, value);
        for (JsonNode rule : parents.path("allOf")) {
            if (rule.at("/if/properties/" + name + "/const").equals(value)) {
                give(parent, parents, rule.at("/then/required"));
            }
        }
        takeOutWhatHangs(given, schema);
        return given;
    }

    /** With all that may not stand without it. */
    private static void takeOut(ObjectNode parent, JsonNode parents, String name) {
        JsonNode value = parent.remove(name);
        if (value == null) {
            return;
        }
        for (Map.Entry<String, JsonNode> needs :
                parents.path("dependentRequired").properties()) {
            if (contains(needs.getValue(), name)) {
                takeOut(parent, parents, needs.getKey());
            }
        }
        for (JsonNode rule : parents.path("allOf")) {
            if (rule.at("/if/properties/" + name + "/const").equals(value)) {
                rule.at("/then/required").forEach(other -> parent.remove(other.asText()));
            }
        }
    }

    /** What goes only with a field of an inner object that is not there. */
    private static void takeOutWhatHangs(ObjectNode request, JsonNode schema) {
        for (JsonNode rule : ContractSchema.resolved(schema).path("allOf")) {
            for (Map.Entry<String, JsonNode> inner : rule.at("/then/properties").properties()) {
                for (JsonNode need : inner.getValue().path("required")) {
                    if (!request.path(inner.getKey()).has(need.asText())) {
                        rule.at("/if/anyOf")
                                .forEach(one ->
                                        request.remove(one.at("/required/0").asText()));
                    }
                }
            }
        }
    }

    /** The object that holds the field, made where the request has none. */
    private static ObjectNode parent(JsonNode request, JsonPointer pointer) {
        JsonNode at = request;
        for (JsonPointer rest = pointer; !rest.matches(); rest = rest.tail()) {
            String part = rest.getMatchingProperty();
            JsonNode child = at.isArray() ? at.path(rest.getMatchingIndex()) : at.path(part);
            at = child.isMissingNode() ? ((ObjectNode) at).putObject(part) : child;
        }
        return (ObjectNode) at;
    }

    private static JsonNode value(JsonNode schema) {
        JsonNode field = ContractSchema.resolved(schema);
        if (field.has("properties")) {
            return object(field);
        }
        if (field.has("example")) {
            return field.get("example");
        }
        if (field.has("enum")) {
            return field.get("enum").get(0);
        }
        return switch (field.path("type").asText()) {
            case "boolean" -> BooleanNode.TRUE;
            case "integer", "number" ->
                IntNode.valueOf(Math.min(LARGE, field.path("maximum").asInt(LARGE)));
            default -> throw new AssertionError("No example in " + field);
        };
    }

    /** All that it requires, and the first of what it requires one of. */
    private static JsonNode object(JsonNode schema) {
        ObjectNode object = JsonNodeFactory.instance.objectNode();
        give(object, schema, schema.path("required"));
        for (JsonNode rule : schema.path("allOf")) {
            give(object, schema, rule.at("/oneOf/0/required"));
        }
        return object;
    }

    private static void give(ObjectNode object, JsonNode schema, JsonNode names) {
        for (JsonNode name : names) {
            object.set(name.asText(), value(schema.get("properties").get(name.asText())));
        }
    }

    private static boolean contains(JsonNode names, String name) {
        for (JsonNode one : names) {
            if (one.asText().equals(name)) {
                return true;
            }
        }
        return false;
    }
}
