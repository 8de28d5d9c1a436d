package wayside.widget;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonParser;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Response;
import org.junit.jupiter.api.Test;

/** A mistake is told beside its field, in the words of the problem document. */
class FaultTest {
    @Test
    void tellsEveryMistakeBesideItsFieldAtOnce() {
        try (Sheet sheet = Sheet.ofDemo(Sheet.DESKTOP)) {
            sheet.lines().first().getByLabel("Hours a day").fill("-3");
            Response refused = sheet.page()
                    .waitForResponse(
                            response -> response.url().endsWith("/v1/recommendation")
                                    && response.request().postData().contains("\"latitude\":95"),
                            () -> sheet.labelled("Latitude").fill("95"));

            assertThat(refused.status()).isEqualTo(422);
            JsonArray errors =
                    JsonParser.parseString(refused.text()).getAsJsonObject().getAsJsonArray("errors");
            assertThat(fault(sheet, "latitude")).containsText(detail(errors, "/trip/stays/0/place/latitude"));
            assertThat(fault(sheet, "hoursPerDay")).containsText(detail(errors, "/loads/0/hoursPerDay"));
            assertThat(fault(sheet, "latitude")).containsText("It takes a number from -90 to 90.");
            assertThat(sheet.labelled("Latitude")).hasAttribute("aria-invalid", "true");
        }
    }

    @Test
    void takesTheWordsAwayOnceTheFieldIsMended() {
        try (Sheet sheet = Sheet.ofDemo(Sheet.DESKTOP)) {
            sheet.labelled("Nights").fill("0");
            assertThat(fault(sheet, "nights")).isVisible();

            sheet.labelled("Nights").fill("4");

            assertThat(fault(sheet, "nights")).isHidden();
            assertThat(sheet.sentence()).hasText(Sheet.CARRIES);
            assertThat(sheet.page().locator("[aria-invalid]")).hasCount(0);
        }
    }

    @Test
    void letsTheServiceJudgeTextThatIsNoNumber() {
        try (Sheet sheet = Sheet.ofDemo(Sheet.DESKTOP)) {
            sheet.lines().first().getByLabel("Draws while it runs").fill("quite a lot");

            assertThat(fault(sheet, "power")).isVisible();
            assertThat(fault(sheet, "power")).not().isEmpty();
        }
    }

    @Test
    void opensWhatIsFoldedOverAMistake() {
        try (Sheet sheet = Sheet.ofDemo(Sheet.DESKTOP)) {
            Locator line = sheet.lines().nth(1);
            line.getByText("more").first().click();
            line.getByLabel("Share of those hours it really runs").fill("150");
            line.getByText("more").first().click();

            assertThat(fault(sheet, "dutyCyclePercent")).isVisible();
        }
    }

    private static Locator fault(Sheet sheet, String field) {
        return sheet.page()
                .locator("[data-control$='." + field + "'] .fault:not([hidden])")
                .first();
    }

    private static String detail(JsonArray errors, String pointer) {
        for (JsonElement error : errors) {
            if (error.getAsJsonObject().get("pointer").getAsString().equals(pointer)) {
                return error.getAsJsonObject().get("detail").getAsString();
            }
        }
        throw new AssertionError("No error for " + pointer + " in " + errors);
    }
}
