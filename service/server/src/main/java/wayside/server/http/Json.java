package wayside.server.http;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamWriteFeature;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.ObjectWriter;
import com.fasterxml.jackson.databind.json.JsonMapper;
import wayside.server.problem.Problem;

/** Writes records as JSON, with one mapper for all. */
final class Json {
    static final String TYPE = "application/json";
    static final String PROBLEM_TYPE = "application/problem+json";

    // The fast writer gives the shortest digits on every Java; the JDK's own differ before 19.
    private static final ObjectMapper MAPPER = JsonMapper.builder(JsonFactory.builder()
                    .enable(StreamWriteFeature.USE_FAST_DOUBLE_WRITER)
                    .build())
            .defaultPropertyInclusion(
                    JsonInclude.Value.construct(JsonInclude.Include.NON_NULL, JsonInclude.Include.ALWAYS))
            .build();
    private static final ObjectWriter PROBLEMS = writer(Problem.class);

    private Json() {}

    static ObjectWriter writer(Class<?> type) {
        return MAPPER.writerFor(type);
    }

    /** A record as JSON. */
    static byte[] bytes(ObjectWriter writer, Object value) {
        try {
            return writer.writeValueAsBytes(value);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("A record of the contract must be writable", e);
        }
    }

    static byte[] bytes(Problem problem) {
        return bytes(PROBLEMS, problem);
    }
}
