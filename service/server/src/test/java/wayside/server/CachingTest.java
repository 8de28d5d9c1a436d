package wayside.server;

import static io.restassured.RestAssured.given;
import static io.restassured.config.DecoderConfig.decoderConfig;
import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.nullValue;

import io.restassured.RestAssured;
import io.restassured.response.Response;
import io.restassured.specification.RequestSpecification;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What browsers and shared caches are told, RFC 9110 sections 8.8, 12.5.3, 12.5.5, 13.1.2 and 15.4.5. */
class CachingTest {
    private static final String WIDGET = "/wayside.js";

    @ParameterizedTest
    @ValueSource(
            strings = {
                WIDGET,
                "/demo/",
                "/demo/index.html",
                "/docs/",
                "/docs/docs.js",
                "/docs/docs.css",
                "/openapi.json",
                "/openapi.yaml",
                "/examples/energy-budget.request.json",
                "/v1",
                "/v1/reference",
                "/v1/reference/practice/appliances"
            })
    void sparesAClientWhatItHasAndNamesNoOtherType(String path) {
        for (String coding : List.of("gzip", "identity")) {
            Response first =
                    asking(coding).get(path).then().statusCode(200).extract().response();
            asking(coding)
                    .header("If-None-Match", "\"other\", W/" + first.header("ETag"))
                    .get(path)
                    .then()
                    .statusCode(304)
                    .header("Content-Type", nullValue())
                    .header("ETag", first.header("ETag"))
                    .header("Cache-Control", first.header("Cache-Control"))
                    .header("Content-Length", Integer.toString(first.asByteArray().length))
                    .body(equalTo(""));
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {WIDGET, "/docs/", "/openapi.json", "/openapi.yaml", "/v1", "/v1/reference"})
    void givesEachCodingItsOwnTag(String path) {
        Response packed = asking("gzip").get(path);
        Response plain = asking("gzip;q=0").get(path);

        assertThat(packed.header("Content-Encoding")).isEqualTo("gzip");
        assertThat(plain.header("Content-Encoding")).isNull();
        assertThat(packed.header("ETag")).isNotEqualTo(plain.header("ETag"));
        assertThat(packed.asByteArray()).hasSizeLessThan(plain.asByteArray().length);
        asking("identity")
                .header("If-None-Match", packed.header("ETag"))
                .get(path)
                .then()
                .statusCode(200)
                .header("Content-Encoding", nullValue());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "gzip, deflate, br, zstd   | gzip",
                "br;q=1, gzip;q=0.5        | gzip",
                "*                         | gzip",
                "*, gzip;q=0               |",
                "*;q=0.0, gzip;q=0.1       | gzip",
                "br                        |",
                "identity                  |",
            })
    void sendsACodingThatTheClientTakes(String accepted, @Nullable String sent) {
        asking(accepted).get(WIDGET).then().statusCode(200).header("Content-Encoding", equalTo(sent));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {WIDGET, "/docs/", "/openapi.json", "/v1/reference", "/v1/reference/practice/none", "/metrics"})
    void tellsCachesThatTheCodingWasChosen(String path) {
        for (String coding : List.of("gzip", "identity")) {
            Response answer = asking(coding).header("If-None-Match", "*").get(path);
            assertThat(answer.headers().getValues("Vary"))
                    .anyMatch(field -> field.toLowerCase(Locale.ROOT).contains("accept-encoding"));
        }
    }

    /** Nothing is unpacked or asked for but what the test says. */
    private static RequestSpecification asking(String coding) {
        return given().port(RunningApp.port())
                .config(RestAssured.config().decoderConfig(decoderConfig().noContentDecoders()))
                .header("Accept-Encoding", coding);
    }
}
