package wayside.widget;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.Margin;
import com.microsoft.playwright.options.Media;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The printed card: the same sheet on paper, without its controls. */
class PrintTest {
    /** An A4 page of 210 mm less two margins of 12 mm, in CSS pixels of 1/96 inch. */
    private static final int PAPER = 703;

    private static final Pattern PDF_PAGE = Pattern.compile("/Type\\s*/Page\\b(?!s)");
    private static final int MOST_PAGES = 6;

    private static Sheet printed(String starter) {
        return printed(starter, new Browser.NewContextOptions());
    }

    private static Sheet printed(String starter, Browser.NewContextOptions options) {
        Sheet sheet = Sheet.startedFrom(starter, options, PAPER);
        sheet.awaitPictures();
        sheet.page().emulateMedia(new Page.EmulateMediaOptions().setMedia(Media.PRINT));
        return sheet;
    }

    @Test
    void carriesTheWholeAnswerAndTheListItAnswers() {
        try (Sheet sheet = printed("winter van")) {
            Page page = sheet.page();
            assertThat(sheet.sentence()).isVisible();
            for (String load :
                    List.of("Compressor fridge", "Induction hob", "Water pump", "Monitors and electronics")) {
                assertThat(page.locator(".order tr").filter(new Locator.FilterOptions().setHasText(load)))
                        .isVisible();
            }
            assertThat(page.locator(".order li").first())
                    .hasText("Alps, 46.5° north 8° east, January, 7 nights, driving 1\u00a0h a day, never plugged in");
            assertThat(page.locator(".circuits tbody tr").first()).isVisible();
            assertThat(page.locator(".cautions li").first()).isVisible();
            assertThat(page.locator(".assumptions li").first()).isVisible();
            assertThat(page.locator(".picture svg:visible")).hasCount(6);
        }
    }

    @Test
    void hasNoControls() {
        try (Sheet sheet = printed("winter van")) {
            assertThat(sheet.page().locator("input:visible, select:visible, button:visible, summary:visible"))
                    .hasCount(1);
            assertThat(sheet.page().locator("summary:visible")).hasText(Pattern.compile("What was assumed.*"));
        }
    }

    @Test
    void tellsOfTwoWindowsAndOfWhatTheTripCanDoWithout() {
        try (Sheet sheet = printed("winter van")) {
            Locator lines = sheet.page().locator(".order tbody tr");
            assertThat(lines.filter(new Locator.FilterOptions().setHasText("LED lights")))
                    .containsText("07:00 to 08:00, 17:00 to 22:30");
            assertThat(lines.filter(new Locator.FilterOptions().setHasText("Induction hob")))
                    .containsText("runs 70\u00a0% of the time, the trip can do without it");
        }
    }

    @Test
    void saysWhenItIsOutOfDate() {
        try (Sheet sheet = Sheet.startedFrom("weekend van", new Browser.NewContextOptions(), PAPER)) {
            sheet.awaitPictures();
            Locator note = sheet.page().getByText("Out of date: this answer belongs to what was entered before");
            sheet.page().emulateMedia(new Page.EmulateMediaOptions().setMedia(Media.PRINT));
            assertThat(note).isHidden();

            sheet.page().emulateMedia(new Page.EmulateMediaOptions().setMedia(Media.SCREEN));
            sheet.page().route("**/v1/recommendation", route -> route.abort());
            sheet.labelled("Nights").fill("5");
            sheet.button("Ask again").waitFor();
            assertThat(note).isHidden();
            sheet.page().emulateMedia(new Page.EmulateMediaOptions().setMedia(Media.PRINT));

            assertThat(note).isVisible();
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"weekend van", "winter van", "workshop truck"})
    void clipsNothing(String starter) {
        try (Sheet sheet = printed(starter)) {
            Object outside = sheet.page()
                    .locator(".take")
                    .evaluate("take => { const paper = take.getBoundingClientRect();"
                            + " const sticksOut = (one, box) => one.getClientRects().length > 0 &&"
                            + " (one.getBoundingClientRect().left < box.left - 1 || one.getBoundingClientRect().right > box.right + 1);"
                            + " return [...take.querySelectorAll('.picture text')].filter((one) => sticksOut(one, one.closest('figure').getBoundingClientRect()))"
                            + ".concat([...take.querySelectorAll('td, th, p, dd, dt')].filter((one) => sticksOut(one, paper)))"
                            + ".map((one) => one.outerHTML); }");

            assertThat((List<?>) outside).isEmpty();
        }
    }

    @Test
    void isInkOnWhiteWhateverTheScreenShows() {
        try (Sheet sheet = printed("weekend van", new Browser.NewContextOptions().setColorScheme(ColorScheme.DARK))) {
            sheet.page().locator("wayside-planner").evaluate("card => card.setAttribute('theme', 'dark')");

            assertThat(sheet.sentence()).hasCSS("color", "rgb(0, 0, 0)");
            assertThat(sheet.page().locator(".sheet")).hasCSS("background-color", "rgb(255, 255, 255)");
        }
    }

    @Test
    void standsAloneOnTheDemosPaper() {
        try (Sheet sheet = Sheet.ofDemo(PAPER)) {
            sheet.page().emulateMedia(new Page.EmulateMediaOptions().setMedia(Media.PRINT));

            assertThat(sheet.sentence()).isVisible();
            assertThat(sheet.page()
                            .locator("h1, #snippet, footer")
                            .filter(new Locator.FilterOptions().setVisible(true)))
                    .hasCount(0);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"A4", "Letter"})
    void fillsAFewPages(String format) {
        try (Sheet sheet = Sheet.startedFrom("winter van", new Browser.NewContextOptions(), Sheet.DESKTOP)) {
            sheet.awaitPictures();
            Margin margin = new Margin()
                    .setTop("12mm")
                    .setBottom("12mm")
                    .setLeft("12mm")
                    .setRight("12mm");
            byte[] pdf =
                    sheet.page().pdf(new Page.PdfOptions().setFormat(format).setMargin(margin));

            long pages = PDF_PAGE.matcher(new String(pdf, StandardCharsets.ISO_8859_1))
                    .results()
                    .count();
            assertThat(pages).isBetween(2L, (long) MOST_PAGES);
        }
    }
}
