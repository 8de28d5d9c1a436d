package wayside.widget;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.Request;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/**
 * How cold it gets, and where the battery stands. A lithium iron phosphate cell isn't charged below 0 C (32 F) but may be
 * discharged there: common practice, no source.
 */
class ColdTest {
    private static Sheet weekend() {
        Sheet sheet = Sheet.startedFrom("weekend van", new Browser.NewContextOptions(), Sheet.DESKTOP);
        sheet.awaitPictures();
        sheet.page().getByText("how cold it gets").click();
        return sheet;
    }

    private static Request asked(Sheet sheet, String operation, String holding, Runnable act) {
        return sheet.page()
                .waitForRequest(
                        request -> request.url().endsWith("/v1/" + operation)
                                && request.postData().contains(holding),
                        act);
    }

    @Test
    void warnsOfChargingInFrostBeforeAnyFigure() {
        try (Sheet sheet = weekend()) {
            assertThat(sheet.page().locator(".frost")).hasCount(0);

            asked(sheet, "recommendation", "\"ambient\":{\"meanC\":-10}", () -> sheet.labelled("Mean of day and night")
                    .fill("-10"));

            assertThat(sheet.page().locator(".frost"))
                    .hasText(Pattern.compile("Frost\\. This trip gets colder than 0\\s°C\\. .*may not be charged.*"));
            assertThat(sheet.page().locator(".cautions .caution-danger").first())
                    .hasText(Pattern.compile(".*below 0\\s°C \\(32\\s°F\\) is damaged.*"));
        }
    }

    @Test
    void takesFahrenheitAndKeepsItThroughAChangeOfUnits() {
        try (Sheet sheet = weekend()) {
            sheet.labelled("US").check();

            // 14 F is -10 C by definition.
            asked(sheet, "recommendation", "\"meanC\":-10}", () -> sheet.labelled("Mean of day and night")
                    .fill("14"));

            sheet.labelled("metric").check();
            assertThat(sheet.labelled("Mean of day and night")).hasValue("-10");
            assertThat(sheet.labelled("Mean of day and night")).isVisible();
        }
    }

    @Test
    void chargesInFrostOnceTheBatteryStandsInAHeatedCabin() {
        try (Sheet sheet = weekend()) {
            sheet.labelled("It stands").selectOption("outside");
            sheet.labelled("Mean of day and night").fill("2");
            assertThat(sheet.figure("Hours too cold to charge")).isVisible();
            assertThat(sheet.page().locator(".picture.warmth table tbody tr"))
                    .not()
                    .hasCount(0);
            assertThat(sheet.page().locator(".frost")).isVisible();

            Request endurance =
                    asked(sheet, "endurance", "\"place\":{\"where\":\"cabin\"}", () -> sheet.labelled("It stands")
                            .selectOption("in the living space"));

            assertThat(endurance.postData()).contains("\"meanC\":2");
            assertThat(sheet.page().locator(".frost")).hasCount(0);
            assertThat(sheet.figure("Hours too cold to charge")).hasCount(0);
        }
    }

    @Test
    void aHeaterIsCountedAmongWhatTheDayTakes() {
        try (Sheet sheet = weekend()) {
            sheet.labelled("It stands").selectOption("outside");
            sheet.labelled("Mean of day and night").fill("2");
            assertThat(sheet.page().locator(".frost")).isVisible();

            sheet.page().getByText("a heater on the battery").click();
            asked(
                    sheet,
                    "endurance",
                    "\"place\":{\"where\":\"outside\",\"heater\":{\"powerW\":40}}",
                    () -> sheet.labelled("Heater").fill("40"));

            assertThat(sheet.page().locator(".frost")).hasCount(0);
            assertThat(sheet.figure("Heater of the battery")).isVisible();
        }
    }
}
