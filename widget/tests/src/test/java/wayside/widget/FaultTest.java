package wayside.widget;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Response;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** A mistake is told beside its field, in the card's own words and the reader's units, once the field was left. */
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
            sheet.labelled("Latitude").blur();

            assertThat(fault(sheet, "latitude")).hasText(Pattern.compile("That can’t be: from -90\\S* to 90°\\."));
            assertThat(fault(sheet, "hoursPerDay")).hasText(Pattern.compile("That can’t be: from 0 to 24\\sh\\."));
            assertThat(sheet.labelled("Latitude")).hasAttribute("aria-invalid", "true");
            // What the line was read as before no longer holds.
            assertThat(sheet.lines().first().locator(".reading")).isEmpty();
            assertThat(sheet.page().locator(".trouble")).containsText("Something you entered can’t be used.");
        }
    }

    @Test
    void takesTheWordsAwayOnceTheFieldIsMended() {
        try (Sheet sheet = Sheet.ofDemo(Sheet.DESKTOP)) {
            leave(sheet.labelled("Nights"), "0");
            assertThat(fault(sheet, "nights")).containsText("a whole number from 1 to 366");

            sheet.labelled("Nights").fill("4");

            assertThat(fault(sheet, "nights")).isHidden();
            assertThat(sheet.sentence()).hasText(Sheet.CARRIES);
            assertThat(sheet.page().locator("[aria-invalid]")).hasCount(0);
        }
    }

    @Test
    void saysWhatAFieldTakesInTheUnitsOfTheReader() {
        try (Sheet sheet = Sheet.ofDemo(Sheet.DESKTOP)) {
            sheet.labelled("US").check();
            sheet.page().getByText("how cold it gets").click();
            leave(sheet.labelled("Mean of day and night"), "400");
            // -60 C and 80 C by the definition of the Fahrenheit scale.
            assertThat(fault(sheet, "meanC")).hasText(Pattern.compile(".*from -76 to 176\\s°F\\."));

            leave(sheet.labelled("Mean of day and night"), "60");
            leave(sheet.labelled("In the shade"), "150");
            assertThat(fault(sheet, "shadedPercent")).hasText(Pattern.compile(".*from 0 to 100\\s%\\."));
        }
    }

    @Test
    void asksForWhatWasTakenOut() {
        try (Sheet sheet = Sheet.ofDemo(Sheet.DESKTOP)) {
            leave(sheet.labelled("Longitude"), "");

            assertThat(fault(sheet, "longitude")).containsText("Something is needed here: from -180");
        }
    }

    @Test
    void tellsTextThatIsNoNumberAndEnergyFromPower() {
        try (Sheet sheet = Sheet.ofDemo(Sheet.DESKTOP)) {
            leave(sheet.lines().first().getByLabel("Draws while it runs"), "quite a lot");
            assertThat(fault(sheet, "power"))
                    .hasText("Watts or amps in figures, please: 45 W, 0.6 kW, 540 VA or 600 mA.");

            leave(sheet.lines().first().getByLabel("Draws while it runs"), "300 Wh");
            assertThat(fault(sheet, "power")).containsText("That is energy.");

            leave(sheet.lines().first().getByLabel("Draws while it runs"), "50");
            leave(sheet.labelled("Nights"), "a few");
            assertThat(fault(sheet, "nights")).hasText("Figures only, please: a whole number from 1 to 366.");
        }
    }

    private static void leave(Locator field, String text) {
        field.fill(text);
        field.blur();
    }

    @Test
    void opensWhatIsFoldedOverAMistake() {
        try (Sheet sheet = Sheet.ofDemo(Sheet.DESKTOP)) {
            Locator line = sheet.lines().nth(1);
            line.getByText("more").first().click();
            line.getByLabel("Share of those hours it really runs").fill("150");
            line.getByLabel("Share of those hours it really runs").blur();
            line.getByText("more").first().click();

            assertThat(fault(sheet, "dutyCyclePercent")).isVisible();
        }
    }

    private static Locator fault(Sheet sheet, String field) {
        return sheet.page()
                .locator("[data-control$='." + field + "'] .fault:not([hidden])")
                .first();
    }
}
