package wayside.widget;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** The pictures, drawn from live answers. */
class PicturesTest {
    private static final List<String> ALL = List.of("charge", "balance", "curve", "sunbymonth", "day");

    @Test
    void drawsTheTripFromTheServicesOwnFigures() {
        try (Sheet sheet = Sheet.ofDemo(Sheet.DESKTOP)) {
            sheet.awaitPictures();

            for (String name : ALL) {
                assertThat(sheet.page().locator(".picture." + name)).isVisible();
                assertThat(sheet.page().locator(".picture." + name + " table tbody tr"))
                        .not()
                        .hasCount(0);
            }
            assertThat(sheet.page().locator(".trip .worst")).hasText(Pattern.compile("The worst of.*"));
            assertThat(sheet.sentence())
                    .hasText(Pattern.compile(".*of 1?[\\d,]*00 such trips once the battery is old\\."));
            assertThat(sheet.mistakes()).isEmpty();
        }
    }

    @Test
    void everyMarkHasAPlace() {
        try (Sheet sheet = Sheet.ofDemo(Sheet.DESKTOP)) {
            sheet.awaitPictures();

            Object lost = sheet.page()
                    .locator(".picture svg *")
                    .evaluateAll("marks => marks.filter((mark) => [...mark.attributes].some(({value}) =>"
                            + " /NaN|undefined|Infinity/.test(value))).map((mark) => mark.outerHTML)");

            assertThat((List<?>) lost).isEmpty();
            assertThat(sheet.page().locator(".picture.curve polyline"))
                    .hasAttribute("points", Pattern.compile("\\S+ \\S+.*"));
        }
    }
}
