package wayside.server;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
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
import wayside.server.http.Operations;

/**
 * What the README, and the pages on speed and running, say of the service is literally so. With {@code wayside.regenerate} its figures are written anew instead.
 */
class ReadmeTest {
    private static final Path README = Path.of("../../README.md");
    private static final Path SPEED = Path.of("../benchmarks/README.md");
    private static final Path RUNNING = Path.of("../../deploy/README.md");
    private static final Path DECISIONS = Path.of("../decisions/README.md");
    /** To a file of the project. */
    private static final Pattern LINK = Pattern.compile("\\]\\(([^):#]+)\\)");

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
        agrees(
                README,
                QUOTED,
                quoted.lines().map(line -> inTheAnswer(line, answer)).collect(Collectors.joining("\n")));
    }

    @Test
    void anAnswerWithoutDerivationHasTheShareThatItSays() {
        String request = requestOfReadme();
        long part = Math.round((double) size(answer(request, "")) / size(answer(request, "return=minimal")));
        agrees(
                README,
                Pattern.compile("(?<=the same answer without derivation and steps, )[^,]+?(?= of its size)"),
                PARTS.getOrDefault(part, "1/" + part));
    }

    @Test
    void theAnswersThatWereMeasuredHaveTheSizesThatItSays() {
        String request = Project.read(Project.EXAMPLES.resolve("recommendation.request.json"));
        long whole = size(answer(request, ""));
        long minimal = size(answer(request, "return=minimal"));
        agrees(SPEED, Pattern.compile("(?<=an answer has )[0-9]+(?= kB)"), kB(whole));
        agrees(SPEED, Pattern.compile("(?<=`Prefer: return=minimal` \\()[0-9]+(?= kB\\))"), kB(minimal));
        agrees(SPEED, Pattern.compile("(?<= kB, )[a-z]+(?= tenths of it derivation)"), TENTHS.get((int)
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
        agrees(README, Pattern.compile("(?<=One file, )[0-9]+(?= kB gzipped)"), kB(sent.body().length));
    }

    @Test
    void itsTableNamesEverySettingAndItsDefault() {
        List<String> shown =
                rows(RUNNING, "WAYSIDE_").map(cells -> cells[1] + cells[2]).toList();
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
        List<String> shown = rows(README, "(POST|GET) /v1")
                .flatMap(cells -> Arrays.stream(cells[1].split(", ", -1)))
                .toList();
        for (var endpoint : Operations.standard().endpoints()) {
            assertThat(shown).anySatisfy(cell -> assertThat(cell).contains(endpoint.path() + "`"));
        }
    }

    @Test
    void whatThePagesLinkToIsThere() throws IOException {
        for (Path page : List.of(README, SPEED, RUNNING, Path.of("../../DEVELOPERS.md"), DECISIONS)) {
            for (MatchResult link : LINK.matcher(Project.read(page)).results().toList()) {
                assertThat(page.resolveSibling(link.group(1)))
                        .as(page + " links")
                        .exists();
            }
        }
    }

    @Test
    void everyDecisionHasItsNumberAndIsListed() throws IOException {
        List<String> records;
        try (Stream<Path> files = Files.list(DECISIONS.resolveSibling("."))) {
            records = files.map(file -> file.getFileName().toString())
                    .filter(name -> !name.equals("README.md"))
                    .sorted()
                    .toList();
        }
        List<String> lines = Project.read(DECISIONS)
                .lines()
                .filter(line -> line.startsWith("- ["))
                .toList();
        assertThat(lines).hasSameSizeAs(records);
        for (int i = 0; i < records.size(); i++) {
            String title = Project.read(DECISIONS.resolveSibling(records.get(i)))
                    .lines()
                    .findFirst()
                    .orElseThrow();
            assertThat(records.get(i)).startsWith("%04d-".formatted(i + 1));
            assertThat(title).startsWith("# " + (i + 1) + ". ");
            assertThat(lines.get(i)).isEqualTo("- [" + title.substring(2) + "](" + records.get(i) + ")");
        }
    }

    /** The cells of each row of a table whose first begins with code of such a beginning. */
    private static Stream<String[]> rows(Path page, String beginning) {
        return Project.read(page)
                .lines()
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

    /** Holds a part of a page to what is so, or writes that there. */
    private static void agrees(Path page, Pattern part, String real) {
        if (Project.REGENERATE) {
            Project.write(page, part.matcher(Project.read(page)).replaceFirst(Matcher.quoteReplacement(real)));
        }
        assertThat(find(part, Project.read(page))).isEqualTo(real);
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
