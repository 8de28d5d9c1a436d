package wayside.widget;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Response;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** The pictures, drawn from live answers. */
class PicturesTest {
    private static final List<String> ALL = List.of("charge", "balance", "recharge", "curve", "sunbymonth", "day");

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
            assertThat(sheet.page().locator(".trip .worst")).hasText(Pattern.compile("(The|Even the) worst of.*"));
            assertThat(sheet.sentence()).hasText(Pattern.compile(".*of 100 such trips once the battery is old\\."));
            assertThat(sheet.mistakes()).isEmpty();
        }
    }

    @Test
    void drawsTheRechargeBesidePlainDivision() {
        try (Sheet sheet = Sheet.ofDemo(Sheet.DESKTOP)) {
            sheet.awaitPictures();
            Response response = sheet.page()
                    .waitForResponse(
                            heard -> heard.url().endsWith("/v1/recharge-time")
                                    && heard.request().postData().contains("agm"),
                            () -> sheet.labelled("Battery").selectOption("agm"));
            JsonObject recharge = JsonParser.parseString(response.text()).getAsJsonObject();
            double hours = recharge.get("hours").getAsDouble();

            assertThat(hours).isGreaterThan(recharge.get("plainDivisionHours").getAsDouble());
            assertThat(sheet.page().locator(".picture.recharge:not(.old) figcaption"))
                    .hasText(Pattern.compile(".*full sun and the engine together: " + asShown(hours) + "\\sh\\..*"));
            assertThat(sheet.page()
                            .locator(".assumptions li")
                            .filter(new Locator.FilterOptions().setHasText("filling up: air temperature")))
                    .hasCount(1);
            assertThat(sheet.figure("Full from empty")).containsText(Pattern.compile(asShown(hours) + "\\sh"));
            assertThat(sheet.page().locator(".picture.recharge tbody tr"))
                    .hasCount(recharge.getAsJsonArray("curve").size());
        }
    }

    /** To a tenth below ten hours, to whole hours from there. */
    private static String asShown(double hours) {
        return String.format(Locale.ROOT, hours < 10 ? "%.1f" : "%.0f", hours).replace(".", "\\.");
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
