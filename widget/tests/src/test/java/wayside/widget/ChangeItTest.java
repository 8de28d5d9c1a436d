package wayside.widget;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.Locator;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** "Change it" stands where pressing it changes that very thing, and nowhere else. */
class ChangeItTest {
    private static Sheet opened(String starter) {
        Sheet sheet = Sheet.startedFrom(starter, new Browser.NewContextOptions(), Sheet.DESKTOP);
        sheet.awaitPictures();
        sheet.page().locator(".assumptions summary").click();
        return sheet;
    }

    private static List<String> offered(Sheet sheet) {
        return sheet.page().locator(".assumptions button").all().stream()
                .map(button -> button.getAttribute("aria-label"))
                .toList();
    }

    @ParameterizedTest
    @ValueSource(strings = {"weekend van", "winter van", "workshop truck"})
    void endsTheAssumptionThatItStandsBeside(String starter) {
        try (Sheet sheet = opened(starter)) {
            List<String> offered = offered(sheet);
            assertThat(offered).hasSizeGreaterThan(8).doesNotHaveDuplicates();
            for (String label : offered) {
                Locator button = sheet.page().locator(".assumptions button[aria-label=\"" + label + "\"]");
                button.click();
                changeWhatHasTheFocus(sheet, label.contains("alternator") ? "70" : "7"); // 7 A would feed no charger
                assertThat(button).hasCount(0);
            }
        }
    }

    private static void changeWhatHasTheFocus(Sheet sheet, String value) {
        Locator control = sheet.page().locator(".asks :focus");
        if (control.evaluate("control => control.tagName").equals("SELECT")) {
            control.evaluate(
                    "control => { control.selectedIndex = control.options.length > 2 && control.options[2].value !== 'price' ? 2 : 1;"
                            + " control.dispatchEvent(new Event('change', {bubbles: true})); }");
        } else {
            control.fill(value);
        }
    }

    @Test
    void isNotOfferedWhereNoControlChangesTheThing() {
        try (Sheet sheet = opened("winter van")) {
            assertThat(offered(sheet)).noneMatch(label -> Pattern.compile(
                            "module|square metre|highest voltage|lowest working voltage|hours of a day|must break"
                                    + "|voltage when hot|share that may|efficiency|reckoned with|hours of driving|elevation|sky")
                    .matcher(label)
                    .find());
        }
    }
}
