package wayside.widget;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Route;
import com.microsoft.playwright.options.Media;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * What people get wrong on a line is told beside it, by the service, with the press that mends it. The figures are common practice,
 * no source.
 */
class HintsTest {
    private static Sheet line(String name, String draw, String hours) {
        Sheet sheet = Sheet.empty(Sheet.DESKTOP);
        sheet.button("Add a line of your own").click();
        sheet.labelled("What").fill(name);
        sheet.labelled("Draws while it runs").fill(draw);
        sheet.labelled("Hours a day").fill(hours);
        return sheet;
    }

    private static Locator told(Sheet sheet) {
        return sheet.lines().first().locator(".told");
    }

    private static Locator reading(Sheet sheet) {
        return sheet.lines().first().locator(".reading");
    }

    @Test
    void doesNotLetAFridgesLabelBeMultipliedBy24() {
        try (Sheet sheet = line("My fridge", "60", "24")) {
            assertThat(reading(sheet)).containsText(Pattern.compile("1\\.4\\skWh"));
            assertThat(told(sheet)).containsText("runs about a third of the time");

            sheet.button("Count a third of the time").click();

            // 60 W for 24 h at 33 % is 475 Wh.
            assertThat(reading(sheet)).containsText(Pattern.compile("480\\sWh"));
            assertThat(told(sheet)).isEmpty();
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"800", "800 W", "0.8 kW", "0,8 kW"})
    void asksWhetherAMicrowavesWattsAreWhatTheFoodGets(String draw) {
        try (Sheet sheet = line("Microwave", draw, "0.2")) {
            sheet.labelled("Supply").selectOption("ac");
            assertThat(told(sheet)).containsText("looks like what the food gets");

            sheet.button("Count 1,200 W").click();

            assertThat(sheet.labelled("Draws while it runs")).hasValue("1200");
            assertThat(told(sheet)).isEmpty();
        }
    }

    @Test
    void asksForAReserveForWhatMustNotFail() {
        try (Sheet sheet = line("CPAP", "30", "8")) {
            assertThat(told(sheet)).containsText("a second source that runs it for a night");
            assertThat(told(sheet).locator("button")).hasCount(0);

            sheet.lines().getByText("more").first().click();
            sheet.labelled("When the battery runs low it").selectOption("comfort");

            assertThat(told(sheet).locator("button")).hasText("Health hangs on it");
            told(sheet).locator("button").click();
            assertThat(sheet.labelled("When the battery runs low it")).hasValue("vital");
        }
    }

    @Test
    void sendsABigApplianceThroughTheInverter() {
        try (Sheet sheet = line("Kettle", "1500", "0.2")) {
            assertThat(told(sheet)).containsText("Does it run through the inverter?");

            sheet.button("It runs on AC").click();

            assertThat(told(sheet)).isEmpty();
            assertThat(sheet.labelled("Supply")).hasValue("ac");
            assertThat(sheet.figure("Continuous")).isVisible();
        }
    }

    @Test
    void sizesTheInverterForACompressorsStart() {
        try (Sheet sheet = line("Air conditioner", "700", "4")) {
            sheet.labelled("Supply").selectOption("ac");
            assertThat(told(sheet)).containsText("for a moment at its start");

            sheet.button("Count 5 times").click();

            // Five times 700 W is 3,500 W; inverters are sold in steps above that.
            assertThat(told(sheet)).isEmpty();
            assertThat(sheet.figure("For a moment, at a start")).containsText(Pattern.compile("[4-9],\\d00\\sW"));
        }
    }

    @Test
    void saysItOnceOnTheScreenAndAgainOnPaper() {
        try (Sheet sheet = line("My fridge", "60", "24")) {
            assertThat(told(sheet)).containsText("runs about a third of the time");
            Locator again = sheet.page()
                    .locator(".cautions li")
                    .filter(new Locator.FilterOptions().setHasText("runs about a third of the time"));
            assertThat(again).isHidden();

            sheet.page().emulateMedia(new Page.EmulateMediaOptions().setMedia(Media.PRINT));

            assertThat(again).isVisible();
        }
    }

    @Test
    void tellsWhatALaterAnswerSaysOfAnotherField() {
        try (Sheet sheet = Sheet.empty(Sheet.DESKTOP)) {
            sheet.page().route("**/v1/endurance", route -> {
                JsonObject answer = JsonParser.parseString(route.fetch().text()).getAsJsonObject();
                JsonObject other = answer.getAsJsonArray("cautions").get(0).getAsJsonObject();
                other.addProperty("code", "cold-charging");
                other.addProperty("field", "/loads/99/powerW");
                other.addProperty("text", "Told of another field.");
                route.fulfill(new Route.FulfillOptions()
                        .setContentType("application/json")
                        .setBody(answer.toString()));
            });
            sheet.button("A weekend van").click();
            sheet.awaitPictures();

            assertThat(sheet.page()
                            .locator(".cautions li")
                            .filter(new Locator.FilterOptions().setHasText("A lithium battery charged below 0 °C")))
                    .hasCount(1);
            assertThat(sheet.page()
                            .locator(".cautions li")
                            .filter(new Locator.FilterOptions().setHasText("Told of another field.")))
                    .hasCount(1);
        }
    }

    @Test
    void saysNothingOfAnOrdinaryLine() {
        try (Sheet sheet = Sheet.ofDemo(Sheet.DESKTOP)) {
            assertThat(sheet.page().locator(".told:not(:empty)")).hasCount(0);
        }
    }

    @Test
    void listsWhatDrawsAlthoughItIsOnNobodysList() {
        try (Sheet sheet = Sheet.ofDemo(Sheet.DESKTOP)) {
            assertThat(sheet.page().locator(".standing"))
                    .hasText(
                            Pattern.compile(
                                    "Always on and counted too: monitors and electronics 120\\sWh a day, the inverter standing by \\d+\\sWh\\."));
        }
    }
}
