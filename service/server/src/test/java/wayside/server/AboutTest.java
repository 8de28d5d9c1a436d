package wayside.server;

import static org.assertj.core.api.Assertions.assertThat;

import io.restassured.path.json.JsonPath;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A program that knows one address finds the others. */
class AboutTest {
    @Test
    void listsWhatItCanBeAsked() {
        JsonPath service =
                RunningApp.request().get("/v1").then().statusCode(200).extract().jsonPath();
        JsonPath contract =
                RunningApp.request().get(service.getString("contract")).jsonPath();
        List<String> paths = service.getList("operations.path");
        assertThat(paths)
                .containsExactlyElementsOf(contract.getMap("paths").keySet().stream()
                        .map(Object::toString)
                        .toList());
        assertThat(paths).contains("/v1/recommendation");
        RunningApp.request()
                .get(service.getString("contractForGenerators"))
                .then()
                .statusCode(200);
        RunningApp.request().get(service.getString("documentation")).then().statusCode(200);
    }

    /** RFC 8631 section 4. */
    @Test
    void linksItsDescriptionFromAnswersAndRefusals() {
        for (String body : List.of("{'loads': [{'name': 'a', 'powerW': 5, 'hoursPerDay': 1}]}", "{")) {
            assertThat(RunningApp.json(body.replace('\'', '"'))
                            .post("/v1/energy-budget")
                            .getHeader("Link"))
                    .contains("</openapi.json>; rel=\"service-desc\"")
                    .contains("</docs/>; rel=\"service-doc\"");
        }
    }
}
