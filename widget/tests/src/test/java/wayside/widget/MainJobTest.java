package wayside.widget;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import com.microsoft.playwright.Browser;
import com.microsoft.playwright.Response;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** From what somebody wants to run to a system they could buy, through the real service. */
class MainJobTest {
    @Test
    void sizesASystemFromAStartingPoint() {
        try (Sheet sheet = Sheet.empty(Sheet.DESKTOP)) {
            sheet.button("A weekend van").click();

            assertThat(sheet.sentence()).hasText(Sheet.CARRIES);
            assertThat(sheet.lines()).hasCount(4);
            sheet.awaitAnswer();
            assertThat(sheet.page().locator(".circuits tbody tr").first()).isVisible();
            assertThat(sheet.page().locator(".cautions li").first()).isVisible();
            assertThat(sheet.mistakes()).isEmpty();
        }
    }

    @Test
    void sizesASystemFromALineOfOnesOwn() {
        try (Sheet sheet = Sheet.empty(Sheet.DESKTOP)) {
            sheet.button("Add a line of your own").click();
            sheet.labelled("What").fill("Aquarium pump");
            sheet.labelled("Draws while it runs").fill("12");
            sheet.labelled("Hours a day").fill("10");

            assertThat(sheet.sentence()).hasText(Sheet.CARRIES);
            // 12 W for 10 h is 120 Wh, and at 12 V that is 10 Ah.
            assertThat(sheet.lines().locator(".reading")).hasText(Pattern.compile("120\\sWh.*10\\sAh"));
        }
    }

    @Test
    void addsFromTheStarterListOfTheService() {
        try (Sheet sheet = Sheet.empty(Sheet.DESKTOP)) {
            sheet.labelled("From the starter list").selectOption("Kettle, 1500 W AC");
            sheet.page().locator(".starterlist button").click();

            assertThat(sheet.sentence()).hasText(Sheet.CARRIES);
            assertThat(sheet.labelled("What")).hasValue("Kettle");
            assertThat(sheet.figure("Continuous")).isVisible();
        }
    }

    @Test
    void countsAmpsAtTheirVoltage() {
        try (Sheet sheet = Sheet.empty(Sheet.DESKTOP)) {
            sheet.button("Add a line of your own").click();
            sheet.labelled("What").fill("Anchor light");
            sheet.labelled("Watts or amps").selectOption("A");
            sheet.labelled("Draws while it runs").fill("2");
            sheet.labelled("Hours a day").fill("5");

            // 2 A at 12 V for 5 h is 120 Wh.
            assertThat(sheet.lines().locator(".reading")).hasText(Pattern.compile("120\\sWh.*10\\sAh"));
        }
    }

    @Test
    void showsTheServicesOwnFiguresNeverRoundedDown() {
        try (Sheet sheet = Sheet.ofDemo(Sheet.DESKTOP)) {
            Response response = sheet.page().waitForResponse("**/v1/recommendation", () -> sheet.labelled("Nights")
                    .fill("6"));
            JsonObject battery =
                    JsonParser.parseString(response.text()).getAsJsonObject().getAsJsonObject("battery");
            double bought = battery.get("nominalCapacityAh").getAsDouble();
            double needed = battery.getAsJsonObject("needed").get("capacityAh").getAsDouble();

            assertThat(sheet.sentence()).containsText(String.format("A %,d\u00a0Ah ", Math.round(bought)));
            assertThat(bought).isGreaterThanOrEqualTo(needed);
            assertThat(needed).isGreaterThan(100);
        }
    }

    @Test
    void opensTheWayToAFigureInItsPlace() {
        try (Sheet sheet = Sheet.ofDemo(Sheet.DESKTOP)) {
            sheet.figure("Energy a day").locator(".why > summary").click();

            assertThat(sheet.figure("Energy a day").locator(".step code").first())
                    .isVisible();
            sheet.figure("Energy a day").locator(".deeper > summary").first().click();
            assertThat(sheet.figure("Energy a day").locator(".deeper .step").first())
                    .isVisible();
        }
    }

    @Test
    void keepsOpenWhatTheReaderOpenedWhenTheAnswerChanges() {
        try (Sheet sheet = Sheet.ofDemo(Sheet.DESKTOP)) {
            sheet.awaitPictures();
            sheet.figure("Energy a day").locator(".why > summary").click();
            String before =
                    sheet.figure("Energy a day").locator(".result").first().textContent();

            sheet.page().locator("li.load").last().locator(".remove").click();

            assertThat(sheet.lines()).hasCount(7);
            assertThat(sheet.figure("Energy a day").locator(".result").first())
                    .not()
                    .hasText(before);
            assertThat(sheet.figure("Energy a day").locator(".step").first()).isVisible();
        }
    }

    @Test
    void leadsFromAnAssumptionToTheControlThatChangesIt() {
        try (Sheet sheet = Sheet.ofDemo(Sheet.DESKTOP)) {
            sheet.page().locator(".assumptions summary").click();
            sheet.page().locator(".assumptions button").first().click();

            assertThat(sheet.page().locator(".asks :focus")).hasCount(1);
        }
    }

    @Test
    void asksWhatYouPayBeforeItPicksTheCheapest() {
        try (Sheet sheet = Sheet.ofDemo(Sheet.DESKTOP)) {
            assertThat(sheet.labelled("Your price of battery")).hasCount(0);
            sheet.labelled("If several do, take").selectOption("the cheapest");
            sheet.labelled("Your price of battery").fill("300");
            Response response = sheet.page()
                    .waitForResponse(
                            heard -> heard.url().endsWith("/v1/recommendation")
                                    && heard.request().postData().contains("arrayPricePerW"),
                            () -> sheet.labelled("Your price of panel").fill("0.8"));

            assertThat(response.request().postData()).contains("\"bankPricePerWh\":0.3", "\"arrayPricePerW\":0.8");
            assertThat(JsonParser.parseString(response.text())
                            .getAsJsonObject()
                            .get("objective")
                            .getAsString())
                    .isEqualTo("price");
        }
    }

    @Test
    void offersNoHelpWhereHardlyATripRunsFlat() {
        try (Sheet sheet = Sheet.startedFrom("weekend van", new Browser.NewContextOptions(), Sheet.DESKTOP)) {
            assertThat(sheet.page().getByText("What would help most")).isVisible();
            sheet.labelled("Size by").selectOption("days in store");
            sheet.labelled("Days on a full battery").fill("4");

            assertThat(sheet.sentence()).containsText("fewer than 1 of 100 such trips");
            assertThat(sheet.page().getByText("What would help most")).hasCount(0);
        }
    }

    @Test
    void sizesATripOfTwoStops() {
        try (Sheet sheet = Sheet.ofDemo(Sheet.DESKTOP)) {
            Response response = sheet.page()
                    .waitForResponse("**/v1/recommendation", () -> sheet.button("Add another stop")
                            .click());

            assertThat(response.status()).isEqualTo(200);
            assertThat(response.request().postData()).containsPattern("\"stays\":\\[\\{.*\\},\\{.*\\}\\]");
            assertThat(sheet.page().locator("fieldset.stay")).hasCount(2);
        }
    }
}
