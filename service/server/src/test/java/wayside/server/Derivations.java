package wayside.server;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.HashMap;
import java.util.Map;

/** What holds for every derivation, wherever its answer stands. */
final class Derivations {
    private Derivations() {}

    /** Each pointer of a figure leads to a number of the document, and that number is its step's. */
    static void assertFiguresAreTheirSteps(JsonNode document, JsonNode derivation) {
        Map<String, Double> values = new HashMap<>();
        derivation
                .get("steps")
                .forEach(step ->
                        values.put(step.get("id").asText(), step.get("value").doubleValue()));
        assertThat(derivation.get("figures").properties()).isNotEmpty().allSatisfy(figure -> {
            JsonNode number = document.at(figure.getKey());
            assertThat(number.isNumber()).as(figure.getKey()).isTrue();
            assertThat(values).containsEntry(figure.getValue().asText(), number.doubleValue());
        });
    }

    /**
     * What was given stands in the request where its field says, and what was left open could.
     *
     * @param here JSON Pointer of the place in which the request stands
     */
    static void assertFieldsArePlaces(JsonNode derivation, JsonNode request, JsonNode schema, String here) {
        for (JsonNode step : derivation.get("steps")) {
            if (step.has("field")) {
                String field = step.get("field").asText();
                assertThat(field).startsWith(here + "/");
                String within = field.substring(here.length());
                assertThat(ContractSchema.find(schema, within)).as(field).isPresent();
                assertThat(request.at(within).isMissingNode())
                        .as(step.toString())
                        .isEqualTo(!step.get("kind").asText().equals("given"));
            }
        }
    }
}
