package wayside.widget;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A line that is not finished is no mistake: it stays out of the sum, and a quiet question stands where its figure would. */
class UnfinishedTest {
    private static Locator reading(Sheet sheet) {
        return sheet.lines().last().locator(".reading");
    }

    private static Locator faults(Sheet sheet) {
        return sheet.page().locator(".fault:not([hidden]), [aria-invalid], .trouble:not(:empty)");
    }

    private static Sheet withALineMore() {
        Sheet sheet = Sheet.ofDemo(Sheet.DESKTOP);
        sheet.button("Add a line of your own").click();
        sheet.lines().last().getByLabel("What", exactly()).fill("Lamp");
        return sheet;
    }

    private static Locator.GetByLabelOptions exactly() {
        return new Locator.GetByLabelOptions().setExact(true);
    }

    @Test
    void asksForWhatIsMissingAndComplainsOfNothing() {
        try (Sheet sheet = withALineMore()) {
            String before = sheet.figure("Energy a day").locator(".value").textContent();
            assertThat(reading(sheet)).hasText("watts?");

            sheet.lines().last().getByLabel("Draws while it runs").fill("60");
            assertThat(reading(sheet)).hasText("hours?");
            sheet.lines().last().getByLabel("Draws while it runs").blur();
            sheet.page().waitForResponse("**/v1/solar-yield", () -> sheet.labelled("Month")
                    .selectOption("February"));
            assertThat(sheet.figure("Energy a day").locator(".value")).hasText(before);
            assertThat(sheet.sentence()).hasText(Sheet.CARRIES);
            assertThat(faults(sheet)).hasCount(0);

            sheet.lines().last().getByLabel("Hours a day").fill("5");
            // 60 W for 5 h is 300 Wh.
            assertThat(reading(sheet)).containsText(Pattern.compile("300\\sWh"));
        }
    }

    @Test
    void asksTheServiceOnlyOnceItCounts() {
        try (Sheet sheet = Sheet.ofDemo(Sheet.DESKTOP)) {
            sheet.awaitPictures();
            AtomicInteger asked = new AtomicInteger();
            sheet.page().onRequest(request -> asked.addAndGet(request.url().endsWith("/v1/recommendation") ? 1 : 0));
            sheet.button("Add a line of your own").click();
            sheet.lines().last().getByLabel("What", exactly()).fill("Lamp");
            sheet.lines().last().getByLabel("Draws while it runs").fill("10");
            sheet.page().waitForTimeout(600);
            assertThat(asked.get()).isZero();

            sheet.lines().last().getByLabel("Hours a day").fill("2");
            assertThat(reading(sheet)).containsText(Pattern.compile("20\\sWh"));
            assertThat(asked.get()).isEqualTo(1);
        }
    }

    @Test
    void asksForTheVoltsOfAmpsAtMains() {
        try (Sheet sheet = withALineMore()) {
            Locator line = sheet.lines().last();
            line.getByLabel("Supply").selectOption("ac");
            line.getByLabel("Draws while it runs").fill("500 mA");
            line.getByLabel("Hours a day").fill("2");
            assertThat(reading(sheet)).hasText("volts?");

            line.getByLabel("Those amps are at").fill("230");

            // 0.5 A at 230 V for 2 h is 230 Wh before what the inverter takes.
            assertThat(reading(sheet)).containsText(Pattern.compile("2\\d0\\sWh"));
            assertThat(faults(sheet)).hasCount(0);
        }
    }

    @Test
    void asksForTheOtherEndOfAWindow() {
        try (Sheet sheet = withALineMore()) {
            Locator line = sheet.lines().last();
            line.getByLabel("Draws while it runs").fill("10");
            line.getByText("more").first().click();
            line.getByLabel("Only from").fill("07:00");
            assertThat(reading(sheet)).hasText("from and until?");

            line.getByLabel("until").first().fill("08:00");

            assertThat(reading(sheet)).containsText(Pattern.compile("10\\sWh"));
            assertThat(faults(sheet)).hasCount(0);
        }
    }

    @Test
    void countsALineWithoutANameAndTwoOfOneName() {
        try (Sheet sheet = withALineMore()) {
            for (String name : new String[] {"Lamp", ""}) {
                Locator line = sheet.lines().last();
                line.getByLabel("What", exactly()).fill(name);
                line.getByLabel("Draws while it runs").fill("10");
                line.getByLabel("Hours a day").fill("4");
                assertThat(reading(sheet)).containsText(Pattern.compile("40\\sWh"));
                sheet.button("Add a line of your own").click();
            }
            Locator line = sheet.lines().last();
            line.getByLabel("What", exactly()).fill("Lamp");
            line.getByLabel("Draws while it runs").fill("10");
            line.getByLabel("Hours a day").fill("2");

            assertThat(reading(sheet)).containsText(Pattern.compile("20\\sWh"));
            assertThat(faults(sheet)).hasCount(0);
        }
    }

    // Watt-hours of 4 h by arithmetic, at 12 V, in steps of 5 from 20 to 200 and of 10 above. Volt-amperes count as
    // watts, at most.
    @ParameterizedTest
    @CsvSource({
        "45 watts, 180",
        "600 mA, 30",
        "54 VA, 220",
        "0.06 kW, 240",
        "'0,06 kW', 240",
        "60W, 240",
        "5 A, 240",
        "'1,5', 6",
        "2 amps, 95"
    })
    void readsTheUnitThatIsTyped(String draw, String wattHours) {
        try (Sheet sheet = Sheet.empty(Sheet.DESKTOP)) {
            sheet.button("Add a line of your own").click();
            sheet.lines().last().getByLabel("Draws while it runs").fill(draw);
            sheet.lines().last().getByLabel("Hours a day").fill("4");

            assertThat(reading(sheet)).containsText(Pattern.compile("(^|\\D)" + wattHours + "\\sWh"));
        }
    }

    @Test
    void complainsOnlyOnceTheFieldWasLeft() {
        try (Sheet sheet = withALineMore()) {
            Locator line = sheet.lines().last();
            line.getByLabel("Hours a day").fill("4");
            sheet.page().waitForResponse("**/v1/recommendation", () -> line.getByLabel("Draws while it runs")
                    .fill("45 wat"));
            sheet.page().waitForTimeout(200);
            assertThat(faults(sheet)).hasCount(0);

            line.getByLabel("Draws while it runs").blur();

            assertThat(line.locator(".power .fault")).hasText(Pattern.compile("Watts or amps in figures.*45 W.*"));
        }
    }
}
