package wayside.server;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import wayside.server.http.Routes;

/**
 * What the README says of the service is literally so. With {@code wayside.regenerate} its figures are written anew instead.
 */
class ReadmeTest {
    private static final Path README = Path.of("../../README.md");
    private static final Pattern REQUEST = Pattern.compile(
            "(?<=curl -s localhost:8080/v1/recommendation -H 'Content-Type: application/json' -d ')[^']+(?=')");
    private static final Pattern QUOTED = Pattern.compile("(?<=Out of it:\\n\\n```\\n).*?(?=\\n```)", Pattern.DOTALL);
    /** A text or a number of JSON; a name has a colon behind it. */
    private static final Pattern VALUE = Pattern.compile("\"(?:[^\"\\\\]|\\\\.)*\"(?!:)|-?[0-9][0-9.E+-]*");

    private static final String MORE = ", ...";
    private static final List<String> TENTHS =
            List.of("no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten");
    private static final Map<Long, String> PARTS =
            Map.of(5L, "a fifth", 6L, "a sixth", 7L, "a seventh", 8L, "an eighth", 9L, "a ninth", 10L, "a tenth");

    @Test
    void whatItQuotesIsInTheAnswerToItsRequest() {
        String answer = answer(requestOfReadme(), "");
        String quoted = find(QUOTED, readme());
        agrees(QUOTED, quoted.lines().map(line -> inTheAnswer(line, answer)).collect(Collectors.joining("\n")));
    }

    @Test
    void anAnswerWithoutDerivationHasTheShareThatItSays() {
        String request = requestOfReadme();
        long part = Math.round((double) size(answer(request, "")) / size(answer(request, "return=minimal")));
        agrees(
                Pattern.compile("(?<=the same answer without derivation and steps, )[^,]+?(?= of its size)"),
                PARTS.getOrDefault(part, "1/" + part));
    }

    @Test
    void theAnswersThatWereMeasuredHaveTheSizesThatItSays() {
        String request = Project.read(Project.EXAMPLES.resolve("recommendation.request.json"));
        long whole = size(answer(request, ""));
        long minimal = size(answer(request, "return=minimal"));
        agrees(Pattern.compile("(?<=an answer has )[0-9]+(?= kB)"), kB(whole));
        agrees(Pattern.compile("(?<=`Prefer: return=minimal` \\()[0-9]+(?= kB\\))"), kB(minimal));
        agrees(Pattern.compile("(?<= kB, )[a-z]+(?= tenths of it derivation)"), TENTHS.get((int)
                Math.round(10 - 10.0 * minimal / whole)));
    }

    @Test
    void theFileOfTheCardHasTheSizeThatItSays() throws Exception {
        HttpRequest request = HttpRequest.newBuilder(
                        URI.create("http://localhost:" + RunningApp.port() + "/wayside.js"))
                .header("Accept-Encoding", "gzip")
                .build();
        HttpResponse<byte[]> sent = HttpClient.newHttpClient().send(request, HttpResponse.BodyHandlers.ofByteArray());
        assertThat(sent.headers().firstValue("Content-Encoding")).hasValue("gzip");
        agrees(Pattern.compile("(?<=One file, )[0-9]+(?= kB gzipped)"), kB(sent.body().length));
    }

    @Test
    void itsTableNamesEverySettingAndItsDefault() {
        List<String> shown = rows("WAYSIDE_").map(cells -> cells[1] + cells[2]).toList();
        List<String> real = Arrays.stream(Setting.values())
                .map(setting -> "`" + setting.variable() + "`"
                        + switch (setting) {
                            case HOST -> "all";
                            case HEAVY_AT_ONCE -> "cores, at least 2";
                            case THREADS -> "2 a core, at least 4";
                            case TRUSTED_PROXIES -> "none";
                            default -> setting.standard().replace("*", "`*`");
                        })
                .toList();
        assertThat(shown).isEqualTo(real);
    }

    @Test
    void itsTableNamesEveryOperation() {
        List<String> shown = rows("(POST|GET) /v1")
                .flatMap(cells -> Arrays.stream(cells[1].split(", ", -1)))
                .toList();
        for (var endpoint : Routes.endpoints()) {
            assertThat(shown).anySatisfy(cell -> assertThat(cell).contains(endpoint.path() + "`"));
        }
    }

    /** The cells of each row of a table whose first begins with code of such a beginning. */
    private static Stream<String[]> rows(String beginning) {
        return readme().lines()
                .filter(line -> line.matches("\\| `" + beginning + ".*"))
                .map(line ->
                        Arrays.stream(line.split("\\|", -1)).map(String::strip).toArray(String[]::new));
    }

    /** The line with the values that the answer has in these fields. */
    private static String inTheAnswer(String line, String answer) {
        String known = line.replace(MORE, "");
        StringBuilder shape = new StringBuilder();
        int end = 0;
        for (MatchResult value : VALUE.matcher(known).results().toList()) {
            shape.append(Pattern.quote(known.substring(end, value.start()))).append("(?:" + VALUE.pattern() + ")");
            end = value.end();
        }
        Pattern fields = Pattern.compile(shape + Pattern.quote(known.substring(end)));
        return find(fields, answer) + line.substring(known.length());
    }

    /** Holds a part of the README to what is so, or writes that there. */
    private static void agrees(Pattern part, String real) {
        if (Project.REGENERATE) {
            Project.write(README, part.matcher(readme()).replaceFirst(Matcher.quoteReplacement(real)));
        }
        assertThat(find(part, readme())).isEqualTo(real);
    }

    private static String find(Pattern part, String text) {
        Matcher found = part.matcher(text);
        assertThat(found.find()).as("a text like " + part).isTrue();
        return found.group();
    }

    private static String readme() {
        return Project.read(README);
    }

    private static String kB(long bytes) {
        return Long.toString(Math.round(bytes / 1000.0));
    }

    private static int size(String text) {
        return text.getBytes(StandardCharsets.UTF_8).length;
    }

    private static String requestOfReadme() {
        return find(REQUEST, readme());
    }

    private static String answer(String request, String preference) {
        return RunningApp.json(request)
                .header("Prefer", preference)
                .post("/v1/recommendation")
                .then()
                .statusCode(200)
                .extract()
                .asString();
    }
}
