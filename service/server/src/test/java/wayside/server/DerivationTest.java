package wayside.server;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The way to the figures of an answer holds together. */
class DerivationTest {
    private static final Map<String, Set<String>> PARTS_OF_A_KIND = Map.of(
            "given", Set.of("field"),
            "default", Set.of("field", "note"),
            "convention", Set.of("note"),
            "looked-up", Set.of("table", "row"));

    private static final Set<String> PARTS =
            Set.of("field", "table", "row", "expression", "operation", "constants", "inputs", "note");

    static List<Project.Example> examples() {
        return Project.examples();
    }

    private static JsonNode answer(Project.Example example) {
        return Project.tree(RunningApp.json(example.request())
                .post(example.operation().path())
                .then()
                .statusCode(200)
                .extract()
                .asString());
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("examples")
    void everyStepStandsAfterTheStepsThatItUses(Project.Example example) {
        Set<String> earlier = new HashSet<>();
        for (JsonNode step : answer(example).at("/derivation/steps")) {
            assertThat(step.path("inputs")).allSatisfy(input -> assertThat(earlier)
                    .contains(input.get("step").asText()));
            assertThat(earlier.add(step.get("id").asText()))
                    .as("%s is new", step)
                    .isTrue();
        }
        assertThat(earlier).isNotEmpty();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("examples")
    void everyFigureIsTheValueOfItsStep(Project.Example example) {
        JsonNode answer = answer(example);
        Derivations.assertFiguresAreTheirSteps(answer, answer.get("derivation"));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("examples")
    void everySourceIsListedOnceAndUsed(Project.Example example) {
        JsonNode derivation = answer(example).get("derivation");
        List<JsonNode> sources = new ArrayList<>();
        derivation.get("sources").forEach(sources::add);
        Set<Integer> used = new HashSet<>();
        derivation.get("steps").forEach(step -> used.add(step.get("source").intValue()));

        assertThat(sources).doesNotHaveDuplicates();
        assertThat(used).allSatisfy(place -> assertThat(place).isBetween(0, sources.size() - 1));
        assertThat(used).hasSameSizeAs(sources);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("examples")
    void everyStepSaysWhatItsKindSays(Project.Example example) {
        for (JsonNode step : answer(example).at("/derivation/steps")) {
            Set<String> parts = new HashSet<>(PARTS);
            parts.removeIf(part -> !step.has(part));
            Set<String> ofItsKind = PARTS_OF_A_KIND.get(step.get("kind").asText());
            if (ofItsKind != null) {
                assertThat(parts).as(step.toString()).isEqualTo(ofItsKind);
            } else {
                assertThat(step.get("kind").asText()).isEqualTo("computed");
                assertThat(parts).as(step.toString()).doesNotContain("field", "table", "row");
            }
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("examples")
    void everyComputedStepIsAnExpressionOrANamedOperation(Project.Example example) {
        for (JsonNode step : answer(example).at("/derivation/steps")) {
            if (step.get("kind").asText().equals("computed")) {
                assertThat(step.has("expression")).as(step.toString()).isNotEqualTo(step.has("operation"));
                assertThat(step.has("note")).as(step.toString()).isEqualTo(step.has("operation"));
            }
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("examples")
    void whatWasGivenIsWhatTheRequestSays(Project.Example example) {
        JsonNode request = Project.tree(example.request());
        JsonNode schema = ContractSchema.request(example.operation().path());
        Derivations.assertFieldsArePlaces(answer(example).get("derivation"), request, schema, "");
    }

    private static final Pattern OF_A_CHANGE = Pattern.compile("with the change|spares|^runs that|^mass that .* adds");

    @ParameterizedTest(name = "{0}")
    @MethodSource("examplesWithLoads")
    void anIdStaysWithItsValueWhenALoadIsAdded(Project.Example example) {
        JsonNode request = Project.tree(example.request());
        ((ArrayNode) request.get("loads"))
                .addObject()
                .put("name", "one lamp more")
                .put("powerW", 3)
                .put("hoursPerDay", 2);
        Map<String, String> before = labels(answer(example));
        Map<String, String> after = labels(Project.tree(RunningApp.json(request.toString())
                .post(example.operation().path())
                .then()
                .statusCode(200)
                .extract()
                .asString()));
        // A change that helped before need not help beside one lamp more.
        before.values().removeIf(label -> OF_A_CHANGE.matcher(label).find());
        assertThat(after).hasSizeGreaterThan(before.size()).containsAllEntriesOf(before);
    }

    static List<Project.Example> examplesWithLoads() {
        return examples().stream()
                .filter(example -> Project.tree(example.request()).has("loads"))
                .toList();
    }

    /** What each id stands for. */
    private static Map<String, String> labels(JsonNode answer) {
        Map<String, String> labels = new HashMap<>();
        answer.at("/derivation/steps")
                .forEach(step ->
                        labels.put(step.get("id").asText(), step.get("label").asText()));
        return labels;
    }
}
