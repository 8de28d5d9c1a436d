package wayside.widget;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A few lines on somebody else's page. */
class EmbeddingTest {
    /** The lines as the demo page prints them, with the address filled in. */
    private static String snippet() {
        return printed().replace("https://your-wayside.example", Wayside.origin());
    }

    private static String printed() {
        try (Sheet sheet = Sheet.ofDemo(Sheet.DESKTOP)) {
            return sheet.page().locator("#snippet").textContent();
        }
    }

    /** Somebody's site: the same page with the card at two addresses. */
    private static PlainServer blog(String lines) {
        byte[] page = ("<!doctype html><html lang=en><title>A page elsewhere</title><main><h1>Elsewhere</h1>" + lines
                        + "</main>")
                .getBytes(StandardCharsets.UTF_8);
        return PlainServer.of(path -> path.equals("/index.html") || path.equals("/second/index.html")
                ? Optional.of(new ByteArrayInputStream(page))
                : Optional.empty());
    }

    @Test
    void worksFromAnotherOriginByTheLinesShown() {
        try (PlainServer blog = blog(snippet());
                Sheet sheet = Sheet.at(blog.origin() + "/", Sheet.DESKTOP)) {
            assertThat(blog.origin()).isNotEqualTo(Wayside.origin());
            assertThat(sheet.sentence()).hasText(Sheet.CARRIES);
            assertThat(sheet.labelled("From the starter list")).isVisible();
        }
    }

    /** The second page asks whether the script that the browser holds has changed, and is told that it has not. */
    @Test
    void showsTheCardOnEveryPageOfAVisit() {
        try (PlainServer blog = blog(snippet());
                Sheet sheet = Sheet.at("about:blank", Sheet.DESKTOP)) {
            Page page = sheet.page();
            List<Integer> answers = new ArrayList<>();
            page.onResponse(response -> {
                if (response.url().endsWith("/wayside.js")) {
                    answers.add(response.status());
                }
            });
            page.navigate(blog.origin() + "/");
            sheet.awaitAnswer();
            page.navigate(blog.origin() + "/second/");
            sheet.awaitAnswer();
            page.navigate(blog.origin() + "/");
            sheet.awaitAnswer();
            page.goBack();
            sheet.awaitAnswer();

            assertThat(answers).contains(304);
        }
    }

    @Test
    void isShownInTheReadmeToo() throws IOException {
        assertThat(Files.readString(Path.of("../../README.md"))).contains(printed());
    }

    @Test
    void leavesALineAndALinkWhereTheScriptDoesNotCome() {
        String lines = snippet().replace("wayside.js", "gone.js");
        try (PlainServer blog = blog(lines);
                Sheet sheet = Sheet.at(blog.origin() + "/", Sheet.PHONE)) {
            assertThat(sheet.page().getByText("The card stands here once its script has come."))
                    .isVisible();
            assertThat(sheet.page().locator("wayside-planner a")).hasAttribute("href", Wayside.origin() + "/demo/");
        }
    }

    @Test
    void keepsNothingAndTalksToItsServiceOnly() {
        try (PlainServer blog = blog(snippet());
                Sheet sheet = Sheet.at("about:blank", Sheet.DESKTOP)) {
            Page page = sheet.page();
            List<String> strangers = new ArrayList<>();
            page.onRequest(request -> {
                if (!request.url().startsWith(Wayside.origin())
                        && !request.url().startsWith(blog.origin())) {
                    strangers.add(request.url());
                }
            });
            page.navigate(blog.origin() + "/");
            sheet.awaitAnswer();

            assertThat(strangers).isEmpty();
            assertThat(sheet.reader().cookies()).isEmpty();
            assertThat(page.evaluate("localStorage.length + sessionStorage.length"))
                    .isEqualTo(0);
            assertThat((List<?>) page.evaluate("indexedDB.databases()")).isEmpty();
        }
    }

    @Test
    void takesThePagesColoursAndType() {
        String lines = snippet()
                .replace(
                        "<wayside-planner",
                        "<wayside-planner style=\"--wayside-ink: #102030; --wayside-font: monospace\"");
        try (PlainServer blog = blog(lines);
                Sheet sheet = Sheet.at(blog.origin() + "/", Sheet.DESKTOP)) {
            sheet.awaitAnswer();

            assertThat(sheet.sentence()).hasCSS("color", "rgb(16, 32, 48)");
            assertThat(sheet.sentence()).hasCSS("font-family", "monospace");
        }
    }

    @Test
    void asksTheServiceThatThePageNames() {
        String lines = snippet().replace("<wayside-planner", "<wayside-planner service=\"" + Wayside.origin() + "/\"");
        try (PlainServer blog = blog(lines);
                Sheet sheet = Sheet.at(blog.origin() + "/", Sheet.DESKTOP)) {
            assertThat(sheet.sentence()).hasText(Sheet.CARRIES);
        }
    }

    @Test
    void speaksTheNumbersOfThePagesLanguage() {
        String lines = snippet().replace("<wayside-planner", "<wayside-planner lang=\"de\"");
        try (PlainServer blog = blog(lines);
                Sheet sheet = Sheet.at(blog.origin() + "/", Sheet.DESKTOP)) {
            sheet.awaitAnswer();

            assertThat(sheet.labelled("Month").locator("option").first()).hasText("Januar");
            assertThat(sheet.figure("Energy a day").locator(".value"))
                    .hasText(java.util.regex.Pattern.compile("\\d,\\d\\skWh|\\d+\\sWh"));
        }
    }
}
