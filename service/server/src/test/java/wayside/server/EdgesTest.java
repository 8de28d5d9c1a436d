package wayside.server;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.restassured.response.Response;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Each number of a request at the ends of its range and next to nothing: answered or refused, never our failure. */
class EdgesTest {
    private static final ObjectMapper MAPPER = new ObjectMapper();
    /** The least double above zero, and the largest whose quotients may have no end. */
    private static final List<Double> NEXT_TO_NOTHING = List.of(Double.MIN_VALUE, 2.3e-308);

    static List<Project.Example> examples() {
        return Project.examples();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("examples")
    void takesTheEndsOfEachRange(Project.Example example) {
        JsonNode schema = ContractSchema.request(example.operation().path());
        List<String> refused = new ArrayList<>();
        for (ContractNumbers.Field field : ContractNumbers.of(schema)) {
            for (JsonNode end : ends(field.schema())) {
                Response response = post(example, field, end);
                List<String> details = response.statusCode() == 422
                        ? response.jsonPath().getList("errors.detail", String.class)
                        : List.of();
                if (response.statusCode() != 200
                        && (details.isEmpty() || !details.stream().allMatch(BetweenFields::tells))) {
                    refused.add(field + " " + end + ": " + response.statusCode() + " " + response.asString());
                }
            }
        }
        assertThat(refused).isEmpty();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("examples")
    void refusesWhatIsNextToNothing(Project.Example example) {
        JsonNode schema = ContractSchema.request(example.operation().path());
        List<String> otherwise = new ArrayList<>();
        for (ContractNumbers.Field field : ContractNumbers.of(schema)) {
            boolean hasLeast = field.schema().path("minimum").asDouble() > 0
                    || field.schema().has("not");
            for (double tiny : NEXT_TO_NOTHING) {
                int status = post(example, field, JsonNodeFactory.instance.numberNode(tiny))
                        .statusCode();
                if (status != 422 && (status != 200 || hasLeast)) {
                    otherwise.add(field + " " + tiny + ": " + status);
                }
            }
        }
        assertThat(otherwise).isEmpty();
    }

    private static List<JsonNode> ends(JsonNode schema) {
        List<JsonNode> ends = new ArrayList<>();
        schema.path("enum").forEach(ends::add);
        for (String end : List.of("minimum", "maximum")) {
            if (schema.has(end)) {
                ends.add(schema.get(end));
            }
        }
        if (schema.has("not")) {
            ends.add(schema.at("/not/exclusiveMaximum"));
        }
        assertThat(ends).as("ends of %s", schema).hasSizeGreaterThan(1);
        return ends;
    }

    private static Response post(Project.Example example, ContractNumbers.Field field, JsonNode value) {
        try {
            ObjectNode request = (ObjectNode) MAPPER.readTree(example.request());
            if (request.has("runs") || example.name().endsWith("by-chance")) {
                request.put("runs", 50);
            }
            field.set(request, value);
            return RunningApp.json(request.toString())
                    .header("Prefer", "return=minimal")
                    .post(example.operation().path());
        } catch (JsonProcessingException e) {
            throw new IllegalStateException(e);
        }
    }
}
