package wayside.widget;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** The whole job without a pointer. */
class KeyboardTest {
    private static final String FOCUSED =
            "(() => { const at = document.querySelector('wayside-planner').shadowRoot.activeElement;"
                    + " return at ? (at.labels?.[0] ?? at).textContent.trim() : ''; })()";
    private static final String OUTLINE =
            "(() => { const at = document.querySelector('wayside-planner').shadowRoot.activeElement;"
                    + " return getComputedStyle(at).outlineStyle + ' ' + getComputedStyle(at).outlineWidth; })()";
    private static final int MOST_STEPS = 120;

    @Test
    void entersALineAndReadsItsReasons() {
        try (Sheet sheet = Sheet.empty(Sheet.DESKTOP)) {
            Page page = sheet.page();
            tabTo(page, "Add a line of your own");
            page.keyboard().press("Enter");
            page.keyboard().type("Lamp");
            tabTo(page, "Draws while it runs");
            page.keyboard().type("10");
            tabTo(page, "Hours a day");
            page.keyboard().type("6");

            assertThat(sheet.sentence()).hasText(Sheet.CARRIES);
            sheet.awaitAnswer();

            tabTo(page, "why Energy a day");
            page.keyboard().press("Enter");
            assertThat(sheet.figure("Energy a day").locator(".step").first()).isVisible();
        }
    }

    @Test
    void showsWhereTheFocusIsAtEveryStep() {
        try (Sheet sheet = Sheet.ofDemo(Sheet.DESKTOP)) {
            Page page = sheet.page();
            sheet.lines().first().getByLabel("How many").focus();
            for (int step = 0; step < 30; step++) {
                page.keyboard().press("Tab");
                assertThat((String) page.evaluate(OUTLINE))
                        .as("outline of " + page.evaluate(FOCUSED))
                        .isEqualTo("solid 2px");
            }
        }
    }

    @Test
    void movesToTheNextLineWhenOneIsRemoved() {
        try (Sheet sheet = Sheet.ofDemo(Sheet.DESKTOP)) {
            sheet.lines().first().locator(".remove").focus();
            sheet.page().keyboard().press("Enter");

            assertThat(sheet.lines()).hasCount(7);
            assertThat(sheet.lines().first().getByLabel("What", exact())).isFocused();
            assertThat(sheet.lines().first().getByLabel("What", exact())).hasValue(Pattern.compile(".+"));
        }
    }

    private static com.microsoft.playwright.Locator.GetByLabelOptions exact() {
        return new com.microsoft.playwright.Locator.GetByLabelOptions().setExact(true);
    }

    private static void tabTo(Page page, String name) {
        for (int step = 0; step < MOST_STEPS; step++) {
            page.keyboard().press("Tab");
            if (name.equals(page.evaluate(FOCUSED))) {
                return;
            }
        }
        throw new AssertionError("No way by the keyboard to " + name);
    }
}
