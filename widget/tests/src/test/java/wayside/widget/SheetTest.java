package wayside.widget;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Route;
import java.nio.file.Path;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** What the sheet makes of an answer; the answer itself is a fixture. */
class SheetTest {
    private static final Path ANSWER = Path.of("src/test/resources/wayside/widget/energy-budget.json");

    private PlainServer site;
    private BrowserContext reader;
    private Page page;

    @BeforeEach
    void openTheDemo() {
        site = PlainServer.ofResources("/widget");
        reader = Chromium.reader(1280, 900);
        page = reader.newPage();
        page.route(
                "**/v1/energy-budget",
                route -> route.fulfill(new Route.FulfillOptions()
                        .setContentType("application/json")
                        .setPath(ANSWER)));
        page.navigate(site.origin() + "/demo/");
    }

    @AfterEach
    void close() {
        reader.close();
        site.close();
    }

    @Test
    void saysTheAnswerAsASentence() {
        assertThat(page.locator(".sentence"))
                .hasText(Pattern.compile("You use about 2\\.2\\skWh a day, 180\\sAh at 12 V\\."));
    }

    @Test
    void opensTheWayToAFigureInItsPlace() {
        page.locator(".figure").first().locator("summary").first().click();

        assertThat(page.locator(".figure").first().locator(".step").first()).containsText("E = loads + losses");
    }

    @Test
    void asksAgainWhenALineIsRemoved() {
        assertThat(page.locator("li.load")).hasCount(8);

        page.waitForRequest(
                request -> request.url().endsWith("/v1/energy-budget")
                        && !request.postData().contains("Water pump"),
                () -> page.getByText("remove Water pump").click());

        assertThat(page.locator("li.load")).hasCount(7);
    }
}
