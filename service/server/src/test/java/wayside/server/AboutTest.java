package wayside.server;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.equalTo;

import io.restassured.path.json.JsonPath;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import wayside.server.contract.Endpoint;

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

    @Test
    void itsVersionIsThatOfTheProject() {
        String pom = Project.read(Path.of("../../pom.xml"));
        Matcher version = Pattern.compile("<artifactId>wayside-parent</artifactId>\\s*<version>([^<]+)<")
                .matcher(pom);
        assertThat(version.find()).isTrue();
        RunningApp.request().get("/v1").then().body("engine.version", equalTo(version.group(1)));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("operations")
    void everyAnswerNamesTheEngineThatRuns(Endpoint operation) {
        JsonPath answer = RunningApp.json(Project.example(operation))
                .post(operation.path())
                .jsonPath();
        JsonPath service = RunningApp.request().get("/v1").jsonPath();
        assertThat(answer.getMap("engine")).isEqualTo(service.getMap("engine")).containsOnlyKeys("version", "tables");
    }

    static List<Endpoint> operations() {
        return Project.operations();
    }

    @Test
    void theEditionOfTheTablesIsAnotherWhenOneFigureOrOneNameIs(@TempDir Path folder) throws IOException {
        Path table =
                Files.writeString(Files.createDirectory(folder.resolve("a")).resolve("b.csv"), "x\n1\n");
        Files.writeString(folder.resolve("read.me"), "no table");
        String edition = EngineFile.edition(folder);
        assertThat(edition).matches("[0-9a-f]{12}");
        Files.writeString(folder.resolve("read.me"), "no table either");
        assertThat(EngineFile.edition(folder)).isEqualTo(edition);
        Files.writeString(table, "x\n2\n");
        assertThat(EngineFile.edition(folder)).isNotEqualTo(edition);
        Files.writeString(table, "x\n1\n");
        assertThat(EngineFile.edition(folder)).isEqualTo(edition);
        Files.move(table, folder.resolve("b.csv"));
        assertThat(EngineFile.edition(folder)).isNotEqualTo(edition);
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
