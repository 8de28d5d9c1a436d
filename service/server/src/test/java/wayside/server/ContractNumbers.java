package wayside.server;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** The numeric fields of a request as its schema in the contract has them, and how each is put into a request. */
final class ContractNumbers {
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    private final List<Field> fields = new ArrayList<>();

    private ContractNumbers() {}

    /**
     * A numeric field.
     *
     * @param path names from the root; a list is entered at its first element
     * @param owner schema of the object that holds the field
     */
    record Field(JsonNode root, List<String> path, JsonNode owner, JsonNode schema) {
        /** Puts a value there, with what has to stand beside it and without what must not. */
        void set(ObjectNode request, JsonNode value) {
            ObjectNode object = request;
            JsonNode schema = root;
            for (String name : path.subList(0, path.size() - 1)) {
                JsonNode child = resolved(schema.at("/properties/" + name));
                boolean list = child.has("items");
                JsonNode element = list ? resolved(child.get("items")) : child;
                if (!object.has(name)) {
                    give(object, schema, name, list ? NODES.arrayNode().add(least(element)) : least(element));
                }
                object = (ObjectNode) (list ? object.get(name).get(0) : object.get(name));
                schema = element;
            }
            give(object, owner, path.get(path.size() - 1), value);
        }

        @Override
        public String toString() {
            return "/" + String.join("/", path);
        }
    }

    static List<Field> of(JsonNode request) {
        ContractNumbers numbers = new ContractNumbers();
        JsonNode root = resolved(request);
        numbers.collect(root, root, List.of());
        return numbers.fields;
    }

    private void collect(JsonNode root, JsonNode owner, List<String> path) {
        for (Map.Entry<String, JsonNode> property : owner.path("properties").properties()) {
            JsonNode schema = resolved(property.getValue());
            List<String> child = new ArrayList<>(path);
            child.add(property.getKey());
            String type = schema.path("type").asText();
            if (type.equals("number") || type.equals("integer")) {
                fields.add(new Field(root, List.copyOf(child), owner, schema));
            } else {
                collect(root, type.equals("array") ? resolved(schema.get("items")) : schema, child);
            }
        }
    }

    private static void give(ObjectNode object, JsonNode owner, String name, JsonNode value) {
        for (JsonNode rule : owner.path("allOf")) {
            List<String> names = new ArrayList<>();
            rule.at("/not/required").forEach(other -> names.add(other.asText()));
            rule.path("oneOf").forEach(one -> names.add(one.at("/required/0").asText()));
            if (names.contains(name)) {
                names.remove(name);
                object.remove(names);
            }
        }
        object.set(name, value);
        for (JsonNode rule : owner.path("allOf")) {
            JsonNode condition = rule.at("/if/properties");
            if (rule.at("/then/required").toString().contains('"' + name + '"')) {
                condition
                        .fieldNames()
                        .forEachRemaining(other -> give(object, owner, other, condition.at("/" + other + "/const")));
                rule.at("/then/required").forEach(other -> {
                    if (!object.has(other.asText())) {
                        object.set(other.asText(), example(owner.at("/properties/" + other.asText())));
                    }
                });
            }
        }
        for (JsonNode other : owner.at("/dependentRequired/" + name)) {
            if (!object.has(other.asText())) {
                give(object, owner, other.asText(), example(owner.at("/properties/" + other.asText())));
            }
        }
    }

    /** An object with what it must have. */
    private static ObjectNode least(JsonNode schema) {
        ObjectNode object = NODES.objectNode();
        schema.path("required")
                .forEach(name -> object.set(name.asText(), example(schema.at("/properties/" + name.asText()))));
        for (JsonNode rule : schema.path("allOf")) {
            String name = rule.at("/oneOf/0/required/0")
                    .asText(rule.at("/anyOf/0/required/0").asText());
            if (!name.isEmpty()) {
                object.set(name, example(schema.at("/properties/" + name)));
            }
        }
        return object;
    }

    private static JsonNode example(JsonNode property) {
        JsonNode schema = resolved(property);
        if (schema.has("items")) {
            ArrayNode list = NODES.arrayNode();
            return list.add(example(schema.get("items")));
        }
        if (schema.has("properties")) {
            return least(schema);
        }
        return schema.has("example")
                ? schema.get("example")
                : schema.has("enum") ? schema.at("/enum/0") : NODES.numberNode(1);
    }

    private static JsonNode resolved(JsonNode schema) {
        return schema.has("$ref")
                ? ContractSchema.DOCUMENT.at(schema.get("$ref").asText().substring(1))
                : schema;
    }
}
