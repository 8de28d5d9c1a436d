package wayside.server;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.not;
import static org.hamcrest.Matchers.notNullValue;
import static org.hamcrest.Matchers.nullValue;

import java.io.IOException;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** How the service keeps to HTTP (RFC 9110) and to the Fetch standard's CORS protocol. */
class HttpTest {
    private static final String BODY = "{\"loads\": [{\"name\": \"fan\", \"powerW\": 20, \"hoursPerDay\": 5}]}";

    @Test
    void answersAnUnknownAddressWithAProblem() {
        RunningApp.request()
                .get("/v1/energy")
                .then()
                .statusCode(404)
                .contentType("application/problem+json")
                .body("type", equalTo("/problems/not-found"));
    }

    @ParameterizedTest
    @CsvSource({"GET, /v1/energy-budget, POST", "DELETE, /v1/reference, GET", "PUT, /metrics, GET", "PATCH, /, GET"})
    void saysWhichMethodsAnAddressTakes(String method, String path, String allowed) {
        RunningApp.request()
                .request(method, path)
                .then()
                .statusCode(405)
                .contentType("application/problem+json")
                .header("Allow", containsString(allowed))
                .body("type", equalTo("/problems/method-not-allowed"));
    }

    @Test
    void answersOptionsWithTheMethods() {
        RunningApp.request()
                .options("/v1/energy-budget")
                .then()
                .statusCode(204)
                .header("Allow", containsString("POST"));
    }

    @Test
    void answersHeadLikeGetWithoutABody() {
        RunningApp.request().head("/v1/reference").then().statusCode(200).header("Content-Length", notNullValue());
    }

    @ParameterizedTest
    @ValueSource(strings = {"text/plain", "application/xml", "application/json; charset=iso-8859-1", "nonsense"})
    void refusesOtherMediaTypes(String type) throws IOException {
        String answer =
                RawRequest.send("POST /v1/energy-budget HTTP/1.1\r\nHost: x\r\nConnection: close\r\nContent-Type: "
                        + type + "\r\nContent-Length: 2\r\n\r\n{}");
        assertThat(answer).startsWith("HTTP/1.1 415").contains("/problems/unsupported-media-type");
    }

    @ParameterizedTest
    @ValueSource(strings = {"gzip", "GZIP", "br", "identity, gzip", "nonsense"})
    void refusesABodyInAContentCoding(String coding) {
        RunningApp.json(BODY)
                .header("Content-Encoding", coding)
                .post("/v1/energy-budget")
                .then()
                .statusCode(415)
                .header("Accept-Encoding", "identity")
                .body("type", equalTo("/problems/unsupported-media-type"))
                .body("detail", containsString("Content-Encoding is"));
    }

    @Test
    void refusesAFormInAContentCoding() {
        RunningApp.request()
                .header("Content-Encoding", "gzip")
                .multiPart("typicalYear", "year.epw", new byte[] {31, -117, 8})
                .post("/v1/solar-yield")
                .then()
                .statusCode(415)
                .header("Accept-Encoding", "identity");
    }

    @Test
    void takesABodyThatSaysItHasNoContentCoding() {
        RunningApp.json(BODY)
                .header("Content-Encoding", "identity")
                .post("/v1/energy-budget")
                .then()
                .statusCode(200);
    }

    /** What a proxy lets through by its method is not another method here. */
    @Test
    void takesTheMethodThatIsSentAndNoOther() throws IOException {
        String override = " HTTP/1.1\r\nHost: x\r\nConnection: close\r\nX-HTTP-Method-Override: ";
        String body = "\r\nContent-Type: application/json\r\nContent-Length: " + BODY.length() + "\r\n\r\n" + BODY;

        assertThat(RawRequest.send("GET /v1/energy-budget" + override + "POST" + body))
                .startsWith("HTTP/1.1 405");
        assertThat(RawRequest.send("DELETE /health/live" + override + "GET\r\n\r\n"))
                .startsWith("HTTP/1.1 405");
        assertThat(RawRequest.send("GET /health/live" + override + "POST\r\n\r\n"))
                .startsWith("HTTP/1.1 200");
        assertThat(RawRequest.send("POST /v1/energy-budget" + override.toLowerCase(Locale.ROOT) + "GET" + body))
                .startsWith("HTTP/1.1 200");
    }

    @Test
    void namesNoTypeOfWhatHasNoBody() {
        for (String path : List.of("/", "/docs", "/demo", "/problems/busy")) {
            RunningApp.request()
                    .redirects()
                    .follow(false)
                    .get(path)
                    .then()
                    .statusCode(302)
                    .header("Content-Type", nullValue())
                    .body(equalTo(""));
        }
        RunningApp.request().options("/v1/energy-budget").then().statusCode(204).header("Content-Type", nullValue());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "text/html                         | 406",
                "application/json;q=0, */*         | 406",
                "application/json;q=0.1            | 200",
                "text/html, application/*;q=0.5    | 200",
                "*/*                               | 200",
            })
    void answersOnlyWhatIsAccepted(String accept, int status) {
        RunningApp.json(BODY)
                .header("Accept", accept)
                .post("/v1/energy-budget")
                .then()
                .statusCode(status);
    }

    @Test
    void refusesABodyThatIsTooLarge() {
        String name = "x".repeat(Settings.defaults().maxBodyBytes());
        RunningApp.json("{\"" + name + "\": 1}")
                .post("/v1/energy-budget")
                .then()
                .statusCode(413)
                .body("type", equalTo("/problems/too-large"));
    }

    @Test
    void refusesABodyWithoutALengthThatIsTooLarge() throws IOException {
        String chunk = "fff0\r\n" + "x".repeat(0xfff0) + "\r\n";
        String answer =
                RawRequest.send("POST /v1/energy-budget HTTP/1.1\r\nHost: x\r\nContent-Type: application/json\r\n"
                        + "Transfer-Encoding: chunked\r\n\r\n" + chunk.repeat(17));
        assertThat(answer).startsWith("HTTP/1.1 413").contains("/problems/too-large");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "GET /v1/reference HTTP/1.1\r\nHost: x\r\nBad Header\r\n\r\n",
                "GET /%zz HTTP/1.1\r\nHost: x\r\n\r\n",
                "GET /v1/..%2fx HTTP/1.1\r\nHost: x\r\n\r\n",
                "nonsense\r\n\r\n",
                "POST /v1/energy-budget HTTP/1.1\r\nHost: x\r\nContent-Length: minus\r\n\r\n",
                "GET / HTTP/1.1\r\n\r\n",
                "GET /health/live HTTP/1.1\nHost: x\n\n",
                "POST /v1/energy-budget HTTP/1.1\r\nHost: x\r\nTransfer-Encoding: gzip, chunked\r\n\r\n0\r\n\r\n",
            })
    void blamesTheClientForWhatIsNoHttp(String request) throws IOException {
        assertThat(RawRequest.send(request)).startsWith("HTTP/1.1 4").contains("application/problem+json");
    }

    @Test
    void refusesAnAddressOrHeadersThatAreTooLong() throws IOException {
        assertThat(RawRequest.send("GET /" + "x".repeat(20_000) + " HTTP/1.1\r\nHost: x\r\n\r\n"))
                .startsWith("HTTP/1.1 414");
        assertThat(RawRequest.send("GET / HTTP/1.1\r\nHost: x\r\nX: " + "x".repeat(20_000) + "\r\n\r\n"))
                .startsWith("HTTP/1.1 431");
    }

    @Test
    void letsPagesOfOtherOriginsCall() {
        RunningApp.request()
                .header("Origin", "https://blog.example")
                .header("Access-Control-Request-Method", "POST")
                .header("Access-Control-Request-Headers", "content-type")
                .options("/v1/energy-budget")
                .then()
                .statusCode(204)
                .header("Access-Control-Allow-Origin", "*")
                .header("Access-Control-Allow-Methods", containsString("POST"))
                .header("Access-Control-Allow-Headers", containsString("Content-Type"))
                .header("Access-Control-Allow-Headers", containsString("Prefer"));
        RunningApp.json("{")
                .header("Origin", "https://blog.example")
                .post("/v1/energy-budget")
                .then()
                .statusCode(400)
                .header("Access-Control-Allow-Origin", "*");
    }

    @Test
    void sendsThePagesAndTheBundle() {
        RunningApp.request().get("/demo/").then().statusCode(200).body(containsString("wayside.js"));
        RunningApp.request()
                .get("/wayside.js")
                .then()
                .statusCode(200)
                .contentType(containsString("text/javascript"))
                .header("X-Content-Type-Options", "nosniff");
        RunningApp.request().redirects().follow(false).get("/").then().statusCode(302);
    }

    @ParameterizedTest
    @ValueSource(strings = {"/demo/..%5cwayside.js", "/demo/.hidden", "/demo/a//b", "/docs/index.class", "/examples/x"})
    void sendsNothingFromOutsideItsFolders(String path) {
        RunningApp.request()
                .urlEncodingEnabled(false)
                .get(path)
                .then()
                .statusCode(org.hamcrest.Matchers.anyOf(equalTo(404), equalTo(400)));
    }

    @Test
    void sendsTheTablesWithTheirSources() {
        RunningApp.request()
                .get("/v1/reference")
                .then()
                .statusCode(200)
                .body("tables.name", hasItem("practice/appliances"));
        RunningApp.request()
                .get("/v1/reference/practice/appliances")
                .then()
                .statusCode(200)
                .body("basis", equalTo("common-practice"))
                .body("columns", hasItem("powerW"));
        RunningApp.request().get("/v1/reference/practice/none").then().statusCode(404);
    }

    @Test
    void tellsItsHealthAndItsMetrics() {
        RunningApp.request().get("/health/live").then().statusCode(200);
        RunningApp.request().get("/health/ready").then().statusCode(200);
        RunningApp.json(BODY).post("/v1/energy-budget").then().statusCode(200);
        RunningApp.request()
                .get("/metrics")
                .then()
                .statusCode(200)
                .body(containsString("wayside_requests_seconds_count{method=\"POST\",operation=\"energy-budget\","))
                .body(containsString("jvm_memory_used_bytes"))
                .body(not(containsString("fan")));
    }
}
