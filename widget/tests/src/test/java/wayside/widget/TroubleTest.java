package wayside.widget;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.assertions.LocatorAssertions;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import wayside.widget.OddServer.Odd;

/** No answer, or not the service's: the card says what is so, that nothing is lost, and goes on by itself or by a press. */
class TroubleTest {
    private static final Pattern NOTHING_ON_THE_LIST = Pattern.compile("Nothing on the list");
    private static final LocatorAssertions.HasTextOptions SOON =
            new LocatorAssertions.HasTextOptions().setTimeout(30_000);

    private static Sheet card(OddServer service) {
        return Sheet.at(service.card("weekend van"), Sheet.DESKTOP);
    }

    private static Locator trouble(Sheet sheet) {
        return sheet.page().locator(".trouble");
    }

    /** What holds of every state without an answer. */
    private static void saysThatNothingIsLost(Sheet sheet) {
        assertThat(trouble(sheet)).containsText("What you entered is still here.");
        assertThat(sheet.sentence()).hasText("No answer yet.");
        assertThat(sheet.take()).hasAttribute("aria-busy", "false");
        assertThat(sheet.lines()).hasCount(4);
        assertThat(sheet.mistakes()).isEmpty();
    }

    private static void recovers(Sheet sheet) {
        assertThat(sheet.sentence()).hasText(Sheet.CARRIES, SOON);
        assertThat(trouble(sheet)).isEmpty();
        assertThat(sheet.take()).not().hasClass(Pattern.compile("stale"));
    }

    @Test
    void saysThatItIsAtWorkWhileTheFirstAnswerIsOut() {
        try (Sheet sheet = Sheet.empty(Sheet.DESKTOP)) {
            sheet.page().route("**/v1/recommendation", route -> {});
            sheet.button("A weekend van").click();

            assertThat(sheet.sentence()).hasText("Working it out …");
            assertThat(sheet.take()).hasAttribute("aria-busy", "true");
            assertThat(sheet.sentence()).not().hasText(NOTHING_ON_THE_LIST);
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {429, 503})
    void asksAgainByItselfWhenTheServiceSaysWhen(int status) {
        try (OddServer service = new OddServer().always(Odd.busy(status, 3));
                Sheet sheet = card(service)) {
            assertThat(trouble(sheet))
                    .containsText(Pattern.compile("hands full.*\\(" + status + "\\).*by itself in 3 s"));
            saysThatNothingIsLost(sheet);

            service.recover();
            recovers(sheet);
        }
    }

    @ParameterizedTest
    @CsvSource({"404, No such service", "500, The service failed", "502, The service failed", "403, turned this down"})
    void asksAgainByAPress(int status, String words) {
        try (OddServer service = new OddServer().always(Odd.status(status));
                Sheet sheet = card(service)) {
            assertThat(trouble(sheet)).containsText(words);
            assertThat(trouble(sheet)).containsText("(" + status + ")");
            saysThatNothingIsLost(sheet);

            service.recover();
            sheet.button("Ask again").click();
            recovers(sheet);
        }
    }

    static Odd[] strangers() {
        return new Odd[] {
            Odd.ok("text/html", "<!doctype html><title>Sign in</title><form>Room number <input></form>"),
            Odd.ok("application/json", "{}"),
            Odd.ok("application/json", "[]"),
            Odd.ok("application/json", "null"),
            Odd.status(511)
        };
    }

    @ParameterizedTest
    @MethodSource("strangers")
    void knowsThatSomethingElseAnswered(Odd odd) {
        try (OddServer service = new OddServer().always(odd);
                Sheet sheet = card(service)) {
            assertThat(trouble(sheet)).containsText("Something else answered");
            saysThatNothingIsLost(sheet);

            service.recover();
            recovers(sheet);
        }
    }

    @Test
    void doesNotWaitForEverOnAnAnswerThatItCannotRead() {
        String answer = "{\"energyBudget\":{},\"shortfalls\":[],\"circuits\":[],\"cautions\":[]}";
        try (OddServer service = new OddServer().only("recommendation", Odd.ok("application/json", answer));
                Sheet sheet = card(service)) {
            assertThat(trouble(sheet)).containsText("this card can’t read");
            assertThat(sheet.take()).hasAttribute("aria-busy", "false");
        }
    }

    @Test
    void asksAgainByItselfWhenTheServiceWasDown() {
        try (OddServer service = new OddServer().always(new Odd(0, "", "", java.util.Map.of()));
                Sheet sheet = card(service)) {
            assertThat(trouble(sheet)).containsText("The service can’t be reached.");
            saysThatNothingIsLost(sheet);

            service.recover();
            recovers(sheet);
            // The starter list could not be had before either.
            assertThat(sheet.labelled("From the starter list")).isVisible();
        }
    }

    @Test
    void asksAgainByItselfOnceItIsBackOnline() {
        try (Sheet sheet = Sheet.ofDemo(Sheet.DESKTOP)) {
            sheet.reader().setOffline(true);
            sheet.labelled("Nights").fill("5");
            assertThat(trouble(sheet)).containsText("You are offline");
            assertThat(trouble(sheet)).containsText("The answer below belongs to what stood there before.");
            assertThat(sheet.sentence()).hasText(Sheet.CARRIES);

            sheet.reader().setOffline(false);
            recovers(sheet);
        }
    }

    @Test
    void saysThatAPartIsMissingAndFetchesIt() {
        try (OddServer service = new OddServer().only("endurance", Odd.busy(503, 3));
                Sheet sheet = card(service)) {
            assertThat(trouble(sheet)).containsText("A part of the answer is still missing.");
            assertThat(sheet.sentence()).hasText(Sheet.CARRIES);
            assertThat(sheet.take()).not().hasClass(Pattern.compile("stale"));

            service.recover();
            sheet.awaitPictures();
            assertThat(trouble(sheet)).isEmpty();
        }
    }

    @Test
    void saysThatTheListIsEmptyOnlyWhenItIs() {
        try (Sheet sheet = Sheet.empty(Sheet.DESKTOP)) {
            sheet.button("Add a line of your own").click();

            assertThat(sheet.sentence()).hasText(Pattern.compile("a line counts once it has its watts and hours"));

            sheet.lines().first().locator(".remove").click();
            assertThat(sheet.sentence()).hasText(NOTHING_ON_THE_LIST);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"/demo/", "/demo/embedded.html"})
    void leavesALineAndALinkWithoutItsScript(String path) {
        Browser.NewContextOptions scriptless = new Browser.NewContextOptions().setJavaScriptEnabled(false);
        try (Sheet sheet = Sheet.at(scriptless, Wayside.origin() + path, Sheet.PHONE)) {
            Locator card = sheet.page().locator("wayside-planner");

            assertThat(card).containsText("The card stands here once its script has come");
            assertThat(card.locator("a")).isVisible();
        }
    }

    @Test
    void hidesThatLineOnceTheCardStands() {
        try (Sheet sheet = Sheet.ofDemo(Sheet.PHONE)) {
            assertThat(sheet.page().locator("wayside-planner > p")).isHidden();
        }
    }
}
