package wayside.server;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import wayside.server.http.Operations;

/** What the docs say beside the contract is so: requests to copy are answered, limits are those of the contract. */
class DocsGuideTest {
    private static final String PAGE = RunningApp.request().get("/docs/").asString();
    private static final Pattern YEAR =
            Pattern.compile("<pre [^>]*id=\"year-request\"[^>]*><code>(.*?)</code>", Pattern.DOTALL);
    private static final Pattern START =
            Pattern.compile("<pre [^>]*id=\"start-request\"[^>]*><code>(.*?)</code>", Pattern.DOTALL);
    private static final Pattern RECIPE =
            Pattern.compile("<pre class=\"copy recipe\"[^>]*><code>(.*?)</code>", Pattern.DOTALL);

    @TempDir
    private static Path folder;

    static List<String> recipes() {
        return all(RECIPE).map(found -> shell(found.group(1))).toList();
    }

    @Test
    void theStartIsAnsweredAsItStands() throws Exception {
        JsonNode answer = Project.tree(run(start()));
        assertThat(answer.path("feasible").isBoolean()).isTrue();
        for (String part : List.of("battery", "solar", "alternator", "inverter", "circuits", "assumptions")) {
            assertThat(answer.path(part).isEmpty()).as(part).isFalse();
        }
        assertThat(answer.has("derivation")).isFalse();
    }

    @ParameterizedTest
    @MethodSource("recipes")
    void aRecipeRunsAsItStands(String recipe) throws Exception {
        run(start());
        String printed = run(recipe);
        assertThat(printed.lines().count()).isGreaterThan(1);
        assertThat(printed).doesNotContain("null");
    }

    @Test
    void theFormIsAnsweredAsItStands() throws Exception {
        Files.write(folder.resolve("year.epw"), InventedYear.bytes());
        JsonNode answer =
                Project.tree(run(shell(all(YEAR).findFirst().orElseThrow().group(1))));
        assertThat(answer.path("months")).hasSize(12);
    }

    @Test
    void limitsOfTheContractAreThoseOfTheContract() {
        JsonNode contract =
                Project.tree(RunningApp.request().get("/openapi.json").asString());
        List<MatchResult> limits =
                all(Pattern.compile("data-at=\"([^\"]+)\">([0-9]+)<")).toList();
        assertThat(limits).hasSizeGreaterThan(4);
        for (MatchResult limit : limits) {
            assertThat(contract.at(limit.group(1)).asText()).as(limit.group(1)).isEqualTo(limit.group(2));
        }
    }

    @Test
    void limitsOfTheServiceAreItsUsualSettings() {
        List<MatchResult> limits =
                all(Pattern.compile("data-setting=\"([^\"]+)\">([0-9]+)<")).toList();
        assertThat(limits).hasSizeGreaterThan(3);
        for (MatchResult limit : limits) {
            assertThat(Setting.valueOf(limit.group(1)).standard()).isEqualTo(limit.group(2));
        }
    }

    @Test
    void theRecommendationComesFirst() {
        assertThat(Operations.standard().endpoints().get(0).id()).isEqualTo("recommendation");
    }

    private static Stream<MatchResult> all(Pattern pattern) {
        return pattern.matcher(PAGE).results();
    }

    private static String start() {
        return shell(all(START).findFirst().orElseThrow().group(1));
    }

    /** What a browser would copy. */
    private static String shell(String html) {
        return html.replaceAll("<[^>]+>", "")
                .replace("&lt;", "<")
                .replace("&gt;", ">")
                .replace("&amp;", "&")
                .replace("localhost:8080", "localhost:" + RunningApp.port());
    }

    private static String run(String script) throws IOException, InterruptedException {
        Process process = new ProcessBuilder("bash", "-euo", "pipefail", "-c", script)
                .directory(folder.toFile())
                .redirectErrorStream(true)
                .start();
        process.outputWriter().close();
        String printed = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(process.waitFor()).as(printed).isZero();
        return printed;
    }
}
