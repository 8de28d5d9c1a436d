package wayside.server;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import wayside.server.answer.Explanation;
import wayside.server.answer.Figures;
import wayside.server.binding.RequestReader;
import wayside.server.operation.recommendation.RecommendationReader;
import wayside.server.operation.recommendation.RecommendationRequest;
import wayside.server.operation.recommendation.RecommendationResponse;
import wayside.server.operation.recommendation.RecommendationWriter;
import wayside.server.operation.solaryield.MostSunshine;
import wayside.sizing.SystemSizer;
import wayside.sizing.brief.At;

/** A recommendation as a part of something larger: every pointer leads to where it stands. */
class NestedAnswerTest {
    private static final String PLACE = "/x/y";
    private static final JsonMapper MAPPER = JsonMapper.builder()
            .defaultPropertyInclusion(
                    JsonInclude.Value.construct(JsonInclude.Include.NON_NULL, JsonInclude.Include.ALWAYS))
            .build();

    static List<Project.Example> examples() {
        return Project.examples().stream()
                .filter(example -> example.operation().id().equals("recommendation"))
                .toList();
    }

    /** Read and written there. */
    private static RecommendationResponse answer(Project.Example example, At at, Figures figures) {
        byte[] body = example.request().getBytes(StandardCharsets.UTF_8);
        RecommendationRequest request = new RequestReader(MostSunshine::addTo).read(body, RecommendationRequest.class);
        return RecommendationWriter.write(SystemSizer.size(RecommendationReader.read(at, request)), figures);
    }

    private static JsonNode within(Project.Example example) {
        return MAPPER.valueToTree(answer(
                example,
                At.ROOT.field("x").field("y"),
                Figures.explained(Explanation.ALL).in("x").in("y")));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("examples")
    void everyPointerLeadsToWhereItStands(Project.Example example) {
        JsonNode answer = within(example);
        JsonNode schema = ContractSchema.request(example.operation().path());
        ObjectNode document = MAPPER.createObjectNode();
        document.putObject("x").set("y", answer);

        Derivations.assertFiguresAreTheirSteps(document, answer.get("derivation"));
        Derivations.assertFieldsArePlaces(answer.get("derivation"), Project.tree(example.request()), schema, PLACE);
        assertThat(answer.at("/derivation/figures").properties())
                .allSatisfy(figure -> assertThat(figure.getKey()).startsWith(PLACE + "/"));
        assertThat(answer.get("assumptions"))
                .filteredOn(assumption -> assumption.has("field"))
                .isNotEmpty()
                .allSatisfy(assumption -> {
                    String field = assumption.get("field").asText();
                    assertThat(field).startsWith(PLACE + "/");
                    assertThat(ContractSchema.find(schema, field.substring(PLACE.length())))
                            .as(field)
                            .isPresent();
                });
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("examples")
    void saysWhatItSaysOnItsOwnButForThePlace(Project.Example example) {
        JsonNode alone = MAPPER.valueToTree(answer(example, At.ROOT, Figures.explained(Explanation.ALL)));
        String within = within(example).toString();

        assertThat(within).contains("\"" + PLACE + "/");
        assertThat(within.replace("\"" + PLACE + "/", "\"/")).isEqualTo(alone.toString());
    }
}
