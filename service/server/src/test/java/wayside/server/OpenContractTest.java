package wayside.server;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** The contract for generators asks and answers what the strict one does, in the words of OpenAPI 3.0.3. */
class OpenContractTest {
    /** Words of schemas that 3.0.3 does not have, or that generators make wrong code of. */
    private static final Set<String> FOREIGN = Set.of(
            "additionalProperties",
            "anyOf",
            "oneOf",
            "not",
            "if",
            "then",
            "else",
            "dependentRequired",
            "const",
            "contentMediaType",
            "examples",
            "$defs");

    private final JsonNode open = contract("/openapi.generators.json");
    private final JsonNode strict = contract("/openapi.json");

    @Test
    void asksAndAnswersTheSame() {
        assertThat(open.get("openapi").textValue()).isEqualTo("3.0.3");
        assertThat(names(open.get("paths"))).isEqualTo(names(strict.get("paths")));
        JsonNode schemas = open.at("/components/schemas");
        assertThat(names(schemas)).isEqualTo(names(strict.at("/components/schemas")));
        for (String name : names(schemas)) {
            JsonNode mine = schemas.get(name);
            JsonNode theirs = strict.at("/components/schemas/" + name);
            assertThat(names(mine.path("properties"))).as(name).isEqualTo(names(theirs.path("properties")));
            assertThat(mine.path("required")).as(name).isEqualTo(theirs.path("required"));
        }
    }

    @Test
    void holdsNothingThatGeneratorsStumbleOver() {
        List<String> found = new ArrayList<>();
        look(open.at("/components/schemas"), "", found);
        assertThat(found).isEmpty();
        look(strict.at("/components/schemas"), "", found);
        assertThat(found)
                .as("the strict contract has what the open one leaves out")
                .isNotEmpty();
    }

    @Test
    void anAnswerHasOneType() {
        String types = "/paths/~1v1~1circuits/post/responses/200/content";
        assertThat(names(strict.at(types))).containsExactly("application/json", "text/csv");
        assertThat(names(open.at(types))).containsExactly("application/json");
        assertThat(names(open.at("/paths/~1v1~1circuits/post/responses/422/content")))
                .containsExactly("application/problem+json");
    }

    private static void look(JsonNode schemas, String at, List<String> found) {
        for (String name : names(schemas)) {
            schema(schemas.get(name), at + "/" + name, found);
        }
    }

    private static void schema(JsonNode schema, String at, List<String> found) {
        for (String word : names(schema)) {
            boolean foreign = FOREIGN.contains(word) || word.startsWith("x-");
            boolean numbers = word.equals("enum") && schema.get(word).path(0).isNumber();
            boolean openEnd = word.startsWith("exclusive") && !schema.get(word).isBoolean();
            boolean beside = word.equals("$ref") && schema.size() > 1;
            boolean manyTypes = word.equals("type") && schema.get(word).isArray();
            if (foreign || numbers || openEnd || beside || manyTypes) {
                found.add(at + " " + word);
            }
        }
        look(schema.path("properties"), at, found);
        if (schema.has("items")) {
            schema(schema.get("items"), at + "/items", found);
        }
    }

    private static List<String> names(JsonNode node) {
        List<String> names = new ArrayList<>();
        node.fieldNames().forEachRemaining(names::add);
        return names;
    }

    private static JsonNode contract(String path) {
        String text = RunningApp.request()
                .get(path)
                .then()
                .statusCode(200)
                .contentType("application/json")
                .extract()
                .asString();
        try {
            return new ObjectMapper().readTree(text);
        } catch (IOException e) {
            throw new AssertionError(path + " is no JSON", e);
        }
    }
}
