package wayside.widget;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** Metric and US customary units: the service speaks SI, the card what the reader reads. */
class UnitsTest {
    @Test
    void putsPoundsFeetAndGaugeFirstForThoseWhoReadThem() {
        try (Sheet sheet = Sheet.ofDemo(Sheet.DESKTOP)) {
            assertThat(sheet.figure("Weighs")).containsText("kg");
            assertThat(sheet.page().locator(".circuits thead")).containsText(Pattern.compile("Wire, mm².*or AWG"));

            sheet.labelled("US").check();

            assertThat(sheet.figure("Weighs")).containsText("lb");
            assertThat(sheet.page().locator(".circuits thead")).containsText(Pattern.compile("Wire, AWG.*or mm²"));
            assertThat(sheet.page().locator(".circuits tbody tr").first()).containsText("ft");
            assertThat(sheet.figure("Takes no charge below")).containsText(Pattern.compile("32\\s°F"));
        }
    }

    @Test
    void sendsMetresForFeet() {
        try (Sheet sheet = Sheet.ofDemo(Sheet.DESKTOP)) {
            sheet.labelled("US").check();
            sheet.page().getByText("how long your cables run, one way").click();

            // 10 feet are 3.048 m by definition.
            sheet.page()
                    .waitForRequest(
                            request -> request.url().endsWith("/v1/recommendation")
                                    && request.postData().contains("\"inverter\":3.048"),
                            () -> sheet.labelled("Busbar to inverter").fill("10"));

            sheet.labelled("metric").check();
            assertThat(sheet.labelled("Busbar to inverter")).isVisible();
            assertThat(sheet.labelled("Busbar to inverter")).hasValue("3.05");
        }
    }
}
