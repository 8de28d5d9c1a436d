package wayside.widget;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import com.microsoft.playwright.Route;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Chances of one answer are counted of one number of trips, so that they can be compared. */
class ChancesTest {
    private static final Pattern COUNTED = Pattern.compile("\\bof (100|1,000)\\b");

    private static Set<String> denominators(Sheet sheet) {
        Set<String> found = new TreeSet<>();
        Matcher counted = COUNTED.matcher(
                (String)
                        sheet.take()
                                .evaluate(
                                        "take => [...take.querySelectorAll('.sentence, .order, .group, .besides')].map((one) => one.textContent).join()"));
        while (counted.find()) {
            found.add(counted.group(1));
        }
        return found;
    }

    @ParameterizedTest
    @ValueSource(strings = {"1", "5", "20"})
    void areCountedOfOneNumberOfTrips(String accepted) {
        try (Sheet sheet = Sheet.ofDemo(Sheet.DESKTOP)) {
            sheet.labelled("Runs flat on at most").selectOption(accepted);
            sheet.awaitPictures();

            assertThat(denominators(sheet)).hasSize(1);
        }
    }

    /** An answer of the service with these chances in it. */
    private static Sheet answered(String helps, double hours) {
        Sheet sheet = Sheet.empty(Sheet.DESKTOP);
        sheet.page().route("**/v1/recommendation", route -> fulfil(route, "whatHelps", helps));
        sheet.page().route("**/v1/endurance", route -> fulfil(route, "expectedUnmetHours", Double.toString(hours)));
        sheet.button("A weekend van").click();
        sheet.awaitPictures();
        return sheet;
    }

    private static void fulfil(Route route, String field, String value) {
        JsonObject answer = JsonParser.parseString(route.fetch().text()).getAsJsonObject();
        answer.add(field, JsonParser.parseString(value));
        answer.getAsJsonObject("chanceOfRunningFlat").addProperty("value", 0.05);
        route.fulfill(
                new Route.FulfillOptions().setContentType("application/json").setBody(answer.toString()));
    }

    @Test
    void showsATieAsATie() {
        try (Sheet sheet = answered(
                "[{\"code\":\"a\",\"text\":\"less of it\",\"chanceOfRunningFlat\":0},"
                        + "{\"code\":\"b\",\"text\":\"more battery\",\"chanceOfRunningFlat\":0.0002},"
                        + "{\"code\":\"c\",\"text\":\"more panel\",\"chanceOfRunningFlat\":0.07}]",
                1)) {
            assertThat(sheet.page().locator(".besides ol li")).hasText(new String[] {
                "less of it; or more battery: then flat on fewer than 1 of 100 such trips, one as good as the other",
                "more panel: then flat on 7 of 100 such trips"
            });
        }
    }

    @Test
    void neverCallsALittleNothing() {
        try (Sheet sheet = answered("[]", 0.012)) {
            assertThat(sheet.figure("Hours short on a trip").locator(".value"))
                    .hasText(Pattern.compile("under 0\\.1\\sh"));
        }
    }
}
