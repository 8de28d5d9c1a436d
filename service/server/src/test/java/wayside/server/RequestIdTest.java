package wayside.server;

import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.matchesPattern;
import static org.hamcrest.Matchers.not;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A request is found again by its name, and in a trace (W3C Trace Context, section 3.2). */
class RequestIdTest {
    // Source: W3C Trace Context, section 3.2.2.3, the example of a traceparent.
    private static final String TRACE = "4bf92f3577b34da6a3ce929d0e0e4736";
    private static final String PARENT = "00f067aa0ba902b7";

    @Test
    void keepsTheNameAndTheTraceOfTheClient() {
        RunningApp.json("{")
                .header("X-Request-Id", "order-17.b")
                .header("traceparent", "00-" + TRACE + "-" + PARENT + "-01")
                .post("/v1/energy-budget")
                .then()
                .statusCode(400)
                .header("X-Request-Id", "order-17.b")
                .header("traceparent", matchesPattern("00-" + TRACE + "-(?!" + PARENT + ")[0-9a-f]{16}-01"))
                .body("requestId", equalTo("order-17.b"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"two words", "<b>", "", "é"})
    void givesANameOfItsOwnWhereTheClientsIsNotPlain(String name) {
        RunningApp.request()
                .header("X-Request-Id", name)
                .header("traceparent", "00-" + "0".repeat(32) + "-" + PARENT + "-01")
                .get("/v1")
                .then()
                .statusCode(200)
                .header("X-Request-Id", matchesPattern("[0-9a-f]{16}"))
                .header("traceparent", not(equalTo("00-" + "0".repeat(32))));
    }
}
