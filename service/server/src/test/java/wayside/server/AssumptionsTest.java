package wayside.server;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** An assumption that names a field is a default: it goes when that field is given. A convention names none and stays. */
class AssumptionsTest {
    /** A default may bring another with it: an array that is given has a mount that isn't. */
    private static final int ROUNDS = 6;

    static List<Project.Example> examples() {
        return Project.examples();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("examples")
    void everyFieldOfAnAssumptionIsOneOfTheContract(Project.Example example) {
        assertThat(openFields(example, Project.tree(example.request())))
                .isNotEmpty()
                .allSatisfy(field -> assertThat(ContractSchema.find(schema(example), field))
                        .as(field)
                        .isPresent());
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("examples")
    void givingItsFieldMakesAnAssumptionGo(Project.Example example) {
        JsonNode request = Project.tree(example.request());
        assertThat(openFields(example, request))
                .filteredOn(field ->
                        openFields(example, giving(example, request, field)).contains(field))
                .isEmpty();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("examples")
    void givingEveryFieldLeavesOnlyConventions(Project.Example example) {
        JsonNode request = Project.tree(example.request());
        Set<String> open = openFields(example, request);
        for (int round = 0; round < ROUNDS && !open.isEmpty(); round++) {
            for (String field : open) {
                request = giving(example, request, field);
            }
            open = openFields(example, request);
        }
        assertThat(open).isEmpty();
    }

    private static JsonNode schema(Project.Example example) {
        return ContractSchema.request(example.operation().path());
    }

    private static JsonNode giving(Project.Example example, JsonNode request, String field) {
        return RequestFields.give(schema(example), (ObjectNode) request, field);
    }

    private static Set<String> openFields(Project.Example example, JsonNode request) {
        List<String> fields = RunningApp.json(request.toString())
                .header("Prefer", "return=minimal")
                .post(example.operation().path())
                .then()
                .statusCode(200)
                .extract()
                .jsonPath()
                .getList("assumptions.findAll { it.field != null }.field");
        return new LinkedHashSet<>(fields);
    }
}
