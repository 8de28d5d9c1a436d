package wayside.server;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import wayside.server.problem.ProblemKind;

/** The docs are served whole, by this service alone. */
class DocsTest {
    @ParameterizedTest
    @ValueSource(
            strings = {
                "index.html",
                "changes.html",
                "docs.css",
                "docs.js",
                "dom.js",
                "contract.js",
                "fields.js",
                "operations.js",
                "codes.js"
            })
    void sendsTheDocsAndNamesNoOtherHost(String file) {
        String text = RunningApp.request()
                .get("/docs/" + file)
                .then()
                .statusCode(200)
                .extract()
                .asString();
        assertThat(text).doesNotContain("http:", "https:", "//cdn");
    }

    @Test
    void leadsFromTheBareAddressToTheFolder() {
        RunningApp.request()
                .redirects()
                .follow(false)
                .get("/docs")
                .then()
                .statusCode(302)
                .header("Location", containsString("/docs/"));
    }

    @Test
    void sendsTheExamplesThatTheDocsShow() {
        for (Project.Example example : Project.examples()) {
            RunningApp.request()
                    .get("/examples/" + example.name() + ".request.json")
                    .then()
                    .statusCode(200)
                    .body(equalTo(example.request()));
        }
    }

    @ParameterizedTest
    @EnumSource(ProblemKind.class)
    void explainsEveryKindOfProblem(ProblemKind kind) {
        RunningApp.request()
                .redirects()
                .follow(false)
                .get(kind.type())
                .then()
                .statusCode(302)
                .header("Location", containsString("/docs/#" + kind.code()));
        RunningApp.request().get("/docs/").then().body(containsString("id=\"" + kind.code() + "\""));
    }
}
