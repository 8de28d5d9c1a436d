package wayside.server;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;

import io.restassured.path.json.JsonPath;
import io.restassured.response.Response;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** What a request costs is told, and a service may be set to take no dear ones. */
class PriceBoundTest {
    private static final String ASKED = "{\"loads\":[{\"name\":\"fan\",\"powerW\":20,\"hoursPerDay\":5}],"
            + "\"trip\":{\"stays\":[{\"place\":{\"latitude\":46,\"longitude\":8},\"month\":6,\"nights\":10}]}%s}";

    private static App app;

    @BeforeAll
    static void start() {
        app = App.create(Settings.from(Map.of("WAYSIDE_PORT", "0", "WAYSIDE_MAX_PRICE_MS", "100")))
                .start();
    }

    @AfterAll
    static void stop() {
        app.close();
    }

    @Test
    void aDearRequestIsToldItsPriceAndTheBound() {
        Response refused = ask(", \"target\": {\"chanceOfRunningFlat\": 0.03}");
        assertThat(refused.statusCode()).isEqualTo(422);
        JsonPath problem = refused.jsonPath();
        String price = refused.header("Wayside-Price");
        assertThat(Integer.parseInt(price)).isBetween(101, 600);
        assertThat(problem.getList("errors.pointer")).isEqualTo(java.util.List.of(""));
        assertThat(problem.getString("errors[0].received")).isEqualTo("a request of " + price + " ms of a core");
        assertThat(problem.getString("errors[0].accepted")).isEqualTo("a request of at most 100 ms of a core");
    }

    @Test
    void aCheapOneIsAnsweredWithItsPrice() {
        Response answered = ask("");
        assertThat(answered.statusCode()).isEqualTo(200);
        assertThat(answered.header("Wayside-Price")).isEqualTo("4");
    }

    private static Response ask(String more) {
        return given().port(app.port())
                .contentType("application/json")
                .body(ASKED.formatted(more))
                .post("/v1/recommendation");
    }
}
