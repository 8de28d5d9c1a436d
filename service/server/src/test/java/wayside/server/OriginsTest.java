package wayside.server;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.nullValue;

import io.restassured.response.Response;
import java.io.IOException;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Which pages may read an answer, and what a shared cache is told of it: the Fetch standard's CORS protocol. */
class OriginsTest {
    private static final String ALLOW = "Access-Control-Allow-Origin";

    @ParameterizedTest
    @CsvSource({
        "/wayside.js, 200",
        "/v1/reference, 200",
        "/v1/reference/practice/none, 404",
        "/nothing, 404",
        "/v1/recommendation, 405",
        "/, 302"
    })
    void saysThatAnyPageMayReadAnAnswerWhoeverAsked(String path, int status) {
        Response answer =
                given().port(RunningApp.port()).redirects().follow(false).get(path);

        answer.then().statusCode(status).header(ALLOW, "*");
    }

    @Test
    void saysSoWhenNothingHasChanged() {
        String tag = given().port(RunningApp.port()).get("/wayside.js").header("ETag");
        given().port(RunningApp.port())
                .header("If-None-Match", tag)
                .get("/wayside.js")
                .then()
                .statusCode(304)
                .header(ALLOW, "*");
    }

    @ParameterizedTest
    @ValueSource(strings = {"GET /%zz HTTP/1.1\r\nHost: x\r\n\r\n", "GET / HTTP/1.1\r\nHost: x y\r\n\r\n"})
    void saysSoOfWhatIsNoHttp(String request) throws IOException {
        assertThat(RawRequest.send(request)).startsWith("HTTP/1.1 400").contains(ALLOW + ": *");
    }

    @Test
    void marksAnswersForThePagesThatMayCall() {
        try (App app = App.create(shopOnly()).start()) {
            Response toShop = reference(app, "https://shop.example");
            Response toOther = reference(app, "https://other.example");
            Response toNobody = given().port(app.port()).get("/v1/reference");

            toShop.then().header(ALLOW, "https://shop.example");
            toOther.then().header(ALLOW, nullValue());
            toNobody.then().header(ALLOW, nullValue());
            for (Response answer : new Response[] {toShop, toOther, toNobody}) {
                assertThat(answer.statusCode()).isEqualTo(200);
                assertThat(answer.headers().getValues("Vary")).contains("Origin");
            }
        }
    }

    @Test
    void marksWhatIsNoHttpForThePagesThatMayCall() throws IOException {
        try (App app = App.create(shopOnly()).start()) {
            String tooLong = "GET / HTTP/1.1\r\nHost: x\r\nOrigin: https://shop.example\r\nX: " + "x".repeat(20_000);

            assertThat(RawRequest.send(app.port(), tooLong + "\r\n\r\n"))
                    .startsWith("HTTP/1.1 431")
                    .contains("Vary: Origin")
                    .doesNotContain(ALLOW + ": *");
        }
    }

    private static Response reference(App app, String origin) {
        return given().port(app.port()).header("Origin", origin).get("/v1/reference");
    }

    private static Settings shopOnly() {
        return Settings.from(Map.of("WAYSIDE_PORT", "0", "WAYSIDE_ALLOWED_ORIGINS", "https://shop.example"));
    }
}
