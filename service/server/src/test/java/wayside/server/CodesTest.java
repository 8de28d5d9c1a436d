package wayside.server;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import wayside.sizing.trace.MessageCode;
import wayside.sizing.trace.Slot;

/** The contract lists every code that an answer may hold, with what it says and its parameters. */
class CodesTest {
    private static final JsonNode SCHEMAS = contract().at("/components/schemas");

    private static JsonNode contract() {
        try {
            return new ObjectMapper()
                    .readTree(RunningApp.request().get("/openapi.json").asString());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Test
    void listsEveryMessageOfTheCoreWithItsParameters() {
        TreeMap<String, List<String>> listed = new TreeMap<>();
        for (JsonNode messages : SCHEMAS.findValues("x-messages")) {
            messages.properties()
                    .forEach(one -> listed.put(
                            one.getValue().get("kind").textValue() + "." + one.getKey(),
                            names(one.getValue().get("parameters"))));
            messages.forEach(one -> assertThat(one.get("text").textValue()).isNotBlank());
        }
        TreeMap<String, List<String>> told = new TreeMap<>();
        for (MessageCode code : MessageCode.all()) {
            told.put(
                    code.kind() + "." + code.code(),
                    code.slots().stream().map(Slot::name).toList());
        }
        assertThat(listed).isEqualTo(told);
    }

    @Test
    void theDocsShowThem() {
        RunningApp.request().get("/docs/").then().body(containsString("id=\"codes\""));
        RunningApp.request().get("/docs/codes.js").then().body(containsString("x-messages"));
    }

    /** What answers the examples get is on the lists, and nothing that has a list is off it. */
    @Test
    void everyCodeOfAnExampleIsOnItsList() {
        List<String> off = new ArrayList<>();
        int[] seen = {0};
        for (Project.Example example : Project.examples()) {
            String operation = example.name().replaceFirst("\\..*", "");
            JsonNode answer = json(
                    RunningApp.json(example.request()).post("/v1/" + operation).asString());
            JsonNode schema =
                    contract().at("/paths/~1v1~1" + operation + "/post/responses/200/content/application~1json/schema");
            check(schema, answer, example.name(), off, seen);
        }
        assertThat(seen[0]).isGreaterThan(1000);
        assertThat(off).isEmpty();
    }

    private static void check(JsonNode schema, JsonNode value, String at, List<String> off, int[] seen) {
        JsonNode known =
                schema.has("$ref") ? SCHEMAS.get(schema.get("$ref").textValue().replaceFirst(".*/", "")) : schema;
        if (known.has("x-extensible-enum")) {
            seen[0]++;
            if (!StreamSupport.stream(known.get("x-extensible-enum").spliterator(), false)
                    .anyMatch(value::equals)) {
                off.add(at + " " + value);
            }
        }
        if (value.isArray()) {
            value.forEach(one -> check(known.get("items"), one, at, off, seen));
        }
        value.properties().forEach(field -> {
            JsonNode property = known.at("/properties/" + field.getKey());
            JsonNode own = property.isMissingNode() ? known.get("additionalProperties") : property;
            check(own, field.getValue(), at + "/" + field.getKey(), off, seen);
        });
    }

    private static JsonNode json(String text) {
        try {
            return new ObjectMapper().readTree(text);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException(e);
        }
    }

    private static List<String> names(JsonNode object) {
        List<String> names = new ArrayList<>();
        object.fieldNames().forEachRemaining(names::add);
        return names;
    }
}
