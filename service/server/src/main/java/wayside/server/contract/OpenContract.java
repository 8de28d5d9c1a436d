package wayside.server.contract;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The same contract for generators of clients: OpenAPI 3.0.3, open, without rules between fields. Many generators make no
 * code, or wrong code, of closed objects, combined schemas and enumerations of numbers; the service goes on refusing what
 * the strict contract refuses.
 */
public final class OpenContract {
    private static final Set<String> RULES =
            Set.of("additionalProperties", "allOf", "anyOf", "oneOf", "not", "if", "then", "else", "dependentRequired");

    private static final String JSON = "application/json";

    private OpenContract() {}

    /** The open contract of a strict one, which stays as it is. */
    public static JsonNode of(JsonNode strict) {
        ObjectNode open = strict.deepCopy();
        open.put("openapi", "3.0.3");
        ((ObjectNode) open.path("info").path("license")).remove("identifier");
        schemas(open.path("components").path("schemas"));
        open.path("paths").forEach(path -> path.forEach(OpenContract::operation));
        return open;
    }

    private static void operation(JsonNode operation) {
        operation.path("parameters").forEach(parameter -> schema(parameter.path("schema")));
        content(operation.path("requestBody").path("content"));
        operation.path("responses").forEach(response -> {
            oneType(response.path("content"));
            content(response.path("content"));
            response.path("headers").forEach(header -> schema(header.path("schema")));
        });
    }

    /** Of an answer in several types a client gets the one that it has types of its own for. */
    private static void oneType(JsonNode content) {
        if (content instanceof ObjectNode types && types.has(JSON)) {
            types.retain(JSON);
        }
    }

    private static void content(JsonNode content) {
        content.forEach(media -> schema(media.path("schema")));
    }

    private static void schemas(JsonNode named) {
        named.forEach(OpenContract::schema);
    }

    private static void schema(JsonNode node) {
        if (!(node instanceof ObjectNode schema)) {
            return;
        }
        schema.remove(RULES);
        withoutExtensions(schema);
        if (schema.path("enum").path(0).isNumber()) {
            schema.remove("enum");
        }
        range(schema, "minimum", "exclusiveMinimum");
        range(schema, "maximum", "exclusiveMaximum");
        binary(schema);
        beside(schema);
        if (schema.get("examples") instanceof ArrayNode examples) {
            schema.remove("examples");
            schema.set("example", examples.path(0));
        }
        schemas(schema.path("properties"));
        schema(schema.path("items"));
    }

    private static void withoutExtensions(ObjectNode schema) {
        List<String> own = new ArrayList<>();
        for (Map.Entry<String, JsonNode> entry : schema.properties()) {
            if (entry.getKey().startsWith("x-")) {
                own.add(entry.getKey());
            }
        }
        schema.remove(own);
    }

    /** An open end is a number in 3.1, and in 3.0 a word beside the number. */
    private static void range(ObjectNode schema, String end, String open) {
        if (schema.path(open).isNumber()) {
            schema.set(end, schema.get(open));
            schema.put(open, true);
        }
    }

    private static void binary(ObjectNode schema) {
        if (schema.remove("contentMediaType") != null) {
            schema.put("format", "binary");
        }
    }

    /** In 3.0 nothing stands beside a reference. */
    private static void beside(ObjectNode schema) {
        JsonNode reference = schema.get("$ref");
        if (reference != null && schema.size() > 1) {
            schema.remove("$ref");
            ArrayNode one = JsonNodeFactory.instance.arrayNode();
            one.addObject().set("$ref", reference);
            schema.set("allOf", one);
        }
    }
}
