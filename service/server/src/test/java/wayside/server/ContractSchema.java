package wayside.server;

import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.dialect.Dialects;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import tools.jackson.databind.exc.JsonNodeException;

/** Schemas of the contract, by an implementation of JSON Schema that is not ours. */
final class ContractSchema {
    static final JsonNode DOCUMENT = document();

    private static final SchemaRegistry REGISTRY = SchemaRegistry.withDialect(Dialects.getOpenApi31());
    private static final Map<JsonNode, Schema> READY = new ConcurrentHashMap<>();

    private ContractSchema() {}

    /** Whether the schema accepts a JSON text. */
    static boolean accepts(JsonNode schema, String json) {
        try {
            return faults(schema, json).isEmpty();
        } catch (JsonNodeException e) {
            // The validator gives up where an integer is wanted and a number beyond 64 bits comes; none of ours is so
            // wide.
            return false;
        }
    }

    /** What the schema says against a JSON text; empty when it accepts it. */
    static List<Error> faults(JsonNode schema, String json) {
        return READY.computeIfAbsent(schema, ContractSchema::ready).validate(json, InputFormat.JSON);
    }

    /** Schema of an operation's request. */
    static JsonNode request(String path) {
        return DOCUMENT.at("/paths/" + path.replace("/", "~1") + "/post/requestBody/content/application~1json/schema");
    }

    /**
     * Schema of the field at a JSON Pointer into a request, whether or not a request gives it; an entry of a list is a
     * number.
     */
    static Optional<JsonNode> find(JsonNode schema, String pointer) {
        JsonNode at = resolved(schema);
        for (JsonPointer rest = JsonPointer.compile(pointer); !rest.matches(); rest = rest.tail()) {
            String part = rest.getMatchingProperty();
            at = resolved(
                    part.matches("\\d+")
                            ? at.path("items")
                            : at.path("properties").path(part));
        }
        return at.isMissingNode() ? Optional.empty() : Optional.of(at);
    }

    static JsonNode resolved(JsonNode schema) {
        JsonNode reference = schema.path("$ref");
        return reference.isMissingNode()
                ? schema
                : DOCUMENT.at(reference.asText().substring(1));
    }

    private static Schema ready(JsonNode schema) {
        ObjectNode whole = schema.deepCopy();
        whole.set("components", DOCUMENT.get("components"));
        return REGISTRY.getSchema(whole.toString());
    }

    private static JsonNode document() {
        try {
            return new ObjectMapper()
                    .readTree(Project.read(Path.of("target/classes/wayside/server/contract/openapi.json")));
        } catch (JsonProcessingException e) {
            throw new IllegalStateException(e);
        }
    }
}
