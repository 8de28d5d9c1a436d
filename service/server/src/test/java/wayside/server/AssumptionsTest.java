package wayside.server;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** An assumption names the field that overrides it: that field is one of the contract. */
class AssumptionsTest {
    static List<Project.Example> examples() {
        return Project.examples();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("examples")
    void everyAssumptionNamesAFieldOfTheRequest(Project.Example example) {
        List<String> fields = RunningApp.json(example.request())
                .post(example.operation().path())
                .then()
                .statusCode(200)
                .extract()
                .jsonPath()
                .getList("assumptions.field");

        assertThat(fields).isNotEmpty().allSatisfy(field -> assertThat(
                        findField(ContractSchema.request(example.operation().path()), field))
                .as(field)
                .isTrue());
    }

    private static boolean findField(JsonNode schema, String pointer) {
        JsonNode at = schema;
        for (String part : pointer.substring(1).split("/", -1)) {
            at = resolved(at);
            at = at.has("items") ? at.get("items") : at.path("properties").path(part);
        }
        return !at.isMissingNode();
    }

    private static JsonNode resolved(JsonNode schema) {
        JsonNode reference = schema.path("$ref");
        return reference.isMissingNode()
                ? schema
                : ContractSchema.DOCUMENT.at(reference.asText().substring(1));
    }
}
