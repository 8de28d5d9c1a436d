package wayside.server;

import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.nullValue;

import java.util.Map;
import org.junit.jupiter.api.Test;

/** A service that lets in the pages of one origin only. */
class OriginsTest {
    @Test
    void marksAnswersForThePagesThatMayCall() {
        Settings settings =
                Settings.from(Map.of("WAYSIDE_PORT", "0", "WAYSIDE_ALLOWED_ORIGINS", "https://shop.example"));
        try (App app = App.create(settings).start()) {
            given().port(app.port())
                    .header("Origin", "https://shop.example")
                    .get("/v1/reference")
                    .then()
                    .statusCode(200)
                    .header("Access-Control-Allow-Origin", "https://shop.example")
                    .header("Vary", "Origin");
            given().port(app.port())
                    .header("Origin", "https://other.example")
                    .get("/v1/reference")
                    .then()
                    .statusCode(200)
                    .header("Access-Control-Allow-Origin", nullValue());
        }
    }
}
