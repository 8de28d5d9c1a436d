package wayside.server;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.nullValue;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.restassured.response.Response;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import wayside.server.contract.Endpoint;

/** A client that prefers {@code return=minimal} (RFC 7240 section 4.2) gets the figures without their derivation. */
class MinimalAnswerTest {
    static List<Endpoint> operations() {
        return Project.operations();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("operations")
    void isTheSameAnswerWithoutItsDerivation(Endpoint operation) throws JsonProcessingException {
        Response minimal = preferring("return=minimal", operation);
        minimal.then().header("Preference-Applied", equalTo("return=minimal")).header("Vary", equalTo("Prefer"));

        ObjectNode whole = (ObjectNode) new ObjectMapper()
                .readTree(preferring("respond-async, x=1", operation)
                        .then()
                        .header("Preference-Applied", nullValue())
                        .header("Vary", equalTo("Prefer"))
                        .extract()
                        .asString());
        assertThat(whole.remove("derivation")).isNotEmpty();
        assertThat(new ObjectMapper().readTree(minimal.asString())).isEqualTo(whole);
    }

    private static Response preferring(String preference, Endpoint operation) {
        return RunningApp.json(Project.example(operation))
                .header("Prefer", preference)
                .post(operation.path())
                .then()
                .statusCode(200)
                .extract()
                .response();
    }
}
