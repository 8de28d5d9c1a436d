package wayside.widget;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Request;
import com.microsoft.playwright.options.AriaRole;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** A line may be on twice a day: lights of the morning and of the evening. */
class WindowsTest {
    /** A lamp of 10 W, its fold open. */
    private static Sheet lamp() {
        Sheet sheet = Sheet.empty(Sheet.DESKTOP);
        sheet.button("Add a line of your own").click();
        sheet.labelled("What").fill("Lamp");
        sheet.labelled("Draws while it runs").fill("10");
        sheet.lines().getByText("more").first().click();
        return sheet;
    }

    private static Locator until(Sheet sheet, int pair) {
        return sheet.labelled("until").nth(pair);
    }

    private static void fillFirst(Sheet sheet) {
        sheet.labelled("Only from").fill("07:00");
        until(sheet, 0).fill("08:00");
    }

    @Test
    void offersASecondWindowOnceTheFirstIsFilled() {
        try (Sheet sheet = lamp()) {
            assertThat(sheet.labelled("and again from")).isHidden();
            fillFirst(sheet);
            assertThat(sheet.labelled("and again from")).isVisible();

            sheet.labelled("and again from").fill("17:00");
            Request asked = sheet.page()
                    .waitForRequest(
                            request -> request.url().endsWith("/v1/recommendation")
                                    && request.postData().contains("22:00"),
                            () -> until(sheet, 1).fill("22:00"));

            assertThat(asked.postData())
                    .contains(
                            "\"windows\":[{\"from\":\"07:00\",\"to\":\"08:00\"},{\"from\":\"17:00\",\"to\":\"22:00\"}]");
            assertThat(sheet.labelled("Hours a day")).hasAttribute("placeholder", "6");
            // 10 W for one hour and for five is 60 Wh, and at 12 V that is 5 Ah.
            assertThat(sheet.lines().locator(".reading")).hasText(Pattern.compile("60\\sWh.*5\\sAh"));
        }
    }

    @Test
    void tellsAnOverlapBesideTheSecondWindow() {
        try (Sheet sheet = lamp()) {
            fillFirst(sheet);
            sheet.labelled("and again from").fill("07:30");
            until(sheet, 1).fill("09:00");

            assertThat(sheet.page().locator("[data-control$='.againFrom'] .fault"))
                    .hasText("Two of its times overlap.");
        }
    }

    @Test
    void startsTheWinterVanWithLightsInTheMorningAndInTheEvening() {
        try (Sheet sheet = Sheet.empty(Sheet.DESKTOP)) {
            sheet.page()
                    .getByRole(AriaRole.BUTTON)
                    .filter(new Locator.FilterOptions().setHasText("A winter van"))
                    .click();
            Locator lights = sheet.lines().nth(2);
            lights.getByText("more").first().click();

            assertThat(lights.getByLabel("and again from")).hasValue("17:00");
            assertThat(lights.locator(".hours input")).hasAttribute("placeholder", "6.5");
        }
    }
}
