package wayside.server;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.StreamSupport;

/** Answers of the service, read as trees. */
final class Answers {
    private Answers() {}

    /** Of a body with single quotes. */
    static JsonNode of(String path, String body) {
        return Project.tree(RunningApp.json(body.replace('\'', '"'))
                .post(path)
                .then()
                .statusCode(200)
                .extract()
                .asString());
    }

    static JsonNode law(JsonNode answer, String code) {
        return StreamSupport.stream(answer.get("laws").spliterator(), false)
                .filter(law -> law.get("code").asText().equals(code))
                .findFirst()
                .orElseThrow(() -> new AssertionError(code + " in " + answer.get("laws")));
    }

    static List<String> codes(JsonNode list) {
        List<String> codes = new ArrayList<>();
        list.forEach(entry -> codes.add(entry.get("code").asText()));
        return codes;
    }
}
