package wayside.widget;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertEquals;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Route;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Map;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** Slow answers, and answers to what is no longer asked. */
class WaitingTest {
    private static final String ASKED = "**/v1/recommendation";

    @Test
    void keepsTheOldAnswerDimmedUntilTheNewOneComes() {
        try (Sheet sheet = Sheet.ofDemo(Sheet.DESKTOP)) {
            Deque<Route> held = new ArrayDeque<>();
            sheet.page().route(ASKED, held::add);

            sheet.labelled("Nights").fill("5");
            Route asked = next(sheet, held);

            assertThat(sheet.take()).hasAttribute("aria-busy", "true");
            assertThat(sheet.sentence()).hasText(Sheet.CARRIES);
            assertThat(sheet.page().locator(".answer")).hasCSS("opacity", "0.55");
            // It stays in view over the figures, which must not shine through.
            assertThat(sheet.sentence()).hasCSS("opacity", "1");

            asked.resume();
            assertThat(sheet.take()).hasAttribute("aria-busy", "false");
            assertThat(sheet.page().locator(".answer")).hasCSS("opacity", "1");
        }
    }

    @Test
    void ignoresAnAnswerToAQuestionThatIsOutOfDate() {
        try (Sheet sheet = Sheet.empty(Sheet.DESKTOP)) {
            Deque<Route> held = new ArrayDeque<>();
            sheet.page().route(ASKED, held::add);
            sheet.button("A winter van").click();
            Route first = next(sheet, held);
            for (int i = 0; i < 7; i++) {
                sheet.lines().last().locator(".remove").click();
            }
            next(sheet, held).resume();
            assertThat(sheet.sentence()).hasText(Sheet.CARRIES);
            String current = sheet.sentence().textContent();

            first.resume();
            sheet.page().unroute(ASKED);
            sheet.awaitAnswer();

            assertThat(sheet.sentence()).hasText(current);
            assertThat(sheet.lines()).hasCount(1);
        }
    }

    @Test
    void goesBackToTheEmptySheetWhenTheLastLineGoes() {
        try (Sheet sheet = Sheet.empty(Sheet.DESKTOP)) {
            sheet.button("A weekend van").click();
            sheet.awaitAnswer();
            for (int i = 0; i < 4; i++) {
                sheet.lines().last().locator(".remove").click();
            }

            assertThat(sheet.sentence()).hasText(Pattern.compile("Nothing on the list yet"));
            assertThat(sheet.button("A weekend van")).isVisible();
        }
    }

    @Test
    void asksForAReasonWhenItIsOpenedAndSaysWhenItDoesNotCome() {
        try (Sheet sheet = Sheet.ofDemo(Sheet.DESKTOP)) {
            Deque<Route> held = new ArrayDeque<>();
            sheet.awaitPictures(); // the last of the answers that draw the card anew
            sheet.page().route("**/v1/recommendation?explain=*", held::add);
            Locator why = sheet.figure("Energy a day").locator(".why");
            why.locator("> summary").click();
            Route asked = next(sheet, held);
            assertThat(why).containsText("Working it out");

            asked.abort();
            assertThat(why).containsText("The reason did not come.");

            why.getByText("Ask again").click();
            next(sheet, held).resume();
            assertThat(why.locator(".step").first()).containsText("energy out of the battery per day");
        }
    }

    @Test
    void waitsForAReasonWhileTheServiceHasTooMuchToDo() {
        try (Sheet sheet = Sheet.ofDemo(Sheet.DESKTOP)) {
            Deque<Route> held = new ArrayDeque<>();
            sheet.awaitPictures();
            sheet.page().route("**/v1/recommendation?explain=*", held::add);
            Locator why = sheet.figure("Energy a day").locator(".why");
            why.locator("> summary").click();
            next(sheet, held).fulfill(new Route.FulfillOptions().setStatus(429).setHeaders(Map.of("Retry-After", "1")));

            next(sheet, held).resume();
            assertThat(why.locator(".step").first()).containsText("energy out of the battery per day");

            // Closed and opened again it is there, and nobody is asked.
            why.locator("> summary").click();
            why.locator("> summary").click();
            assertThat(why.locator(".step").first()).isVisible();
            assertEquals(0, held.size());
        }
    }

    /** The next question that reached the wire. */
    private static Route next(Sheet sheet, Deque<Route> held) {
        sheet.page().waitForCondition(() -> !held.isEmpty());
        return held.remove();
    }
}
