package wayside.server.http;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.StreamWriteFeature;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.ObjectWriter;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.module.SimpleModule;
import java.io.IOException;
import wayside.server.mapping.JsonText;
import wayside.server.mapping.StepListWriter;
import wayside.server.problem.Problem;

/** Writes records as JSON, with one mapper for all. */
final class Json {
    static final String TYPE = "application/json";
    static final String PROBLEM_TYPE = "application/problem+json";

    private static final ObjectMapper MAPPER = plain().addModule(new SimpleModule().addSerializer(new StepListWriter()))
            .build();
    private static final ObjectWriter PROBLEMS = writer(Problem.class);

    private Json() {}

    /** How everything is written but derivations. */
    static JsonMapper.Builder plain() {
        // The fast writer gives the shortest digits on every Java; the JDK's own differ before 19.
        return JsonMapper.builder(JsonFactory.builder()
                        .enable(StreamWriteFeature.USE_FAST_DOUBLE_WRITER)
                        .build())
                .defaultPropertyInclusion(
                        JsonInclude.Value.construct(JsonInclude.Include.NON_NULL, JsonInclude.Include.ALWAYS));
    }

    static ObjectWriter writer(Class<?> type) {
        return MAPPER.writerFor(type);
    }

    static byte[] bytes(ObjectWriter writer, Object value) {
        return text(writer, value, 1_024).toBytes();
    }

    /**
     * A record as JSON.
     *
     * @param usualBytes a guess at its size, so that it need not grow much
     */
    static JsonText text(ObjectWriter writer, Object value, int usualBytes) {
        try {
            JsonText json = new JsonText(usualBytes);
            writer.writeValue(json, value);
            return json;
        } catch (IOException e) {
            throw new IllegalStateException("A record of the contract must be writable", e);
        }
    }

    static byte[] bytes(Problem problem) {
        return bytes(PROBLEMS, problem);
    }
}
