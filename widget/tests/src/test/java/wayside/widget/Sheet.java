package wayside.widget;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Route;
import com.microsoft.playwright.options.AriaRole;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/** A reader with the card in front of them. */
final class Sheet implements AutoCloseable {
    static final int DESKTOP = 1280;
    static final int PHONE = 360;
    private static final int HEIGHT = 900;
    private static final int MOST_MILLIS = 30_000;

    /** How the answer's sentence reads when a system was found. */
    static final Pattern CARRIES =
            Pattern.compile("^An? [\\d.,]+\\sAh .+ battery (and [\\d.,]+\\sW of .+ panel carry|carries) you;.*");

    /** A page of the service's own origin with nothing on it but a card. */
    private static final String BARE = "<!doctype html><html lang=en><meta name=viewport content='width=device-width'>"
            + "<title>A card</title><style>body { margin: 0 }</style><script src=/wayside.js defer></script>"
            + "<main><h1>A card</h1><wayside-planner start='%s'></wayside-planner></main>";

    private final BrowserContext reader;
    private final Page page;
    private final List<String> mistakes = new ArrayList<>();

    private Sheet(Browser.NewContextOptions options, int width) {
        reader = Chromium.reader(options, width, HEIGHT);
        page = reader.newPage();
        page.setDefaultTimeout(MOST_MILLIS);
        page.onPageError(mistakes::add);
    }

    /** The worked demo, answered. */
    static Sheet ofDemo(int width) {
        return ofDemo(new Browser.NewContextOptions(), width);
    }

    static Sheet ofDemo(Browser.NewContextOptions options, int width) {
        Sheet sheet = new Sheet(options, width);
        sheet.page.navigate(Wayside.origin() + "/demo/");
        sheet.awaitAnswer();
        return sheet;
    }

    /** A page of the service with nothing but an empty card. */
    static Sheet empty(int width) {
        Sheet sheet = startedFrom("", new Browser.NewContextOptions(), width);
        sheet.sentence()
                .filter(new Locator.FilterOptions().setHasText("Nothing on the list yet"))
                .waitFor();
        return sheet;
    }

    /** A page of the service with nothing but a card, at a starting point. */
    static Sheet startedFrom(String starter, Browser.NewContextOptions options, int width) {
        Sheet sheet = new Sheet(options, width);
        String page = pageWith(starter);
        sheet.page.route(
                "**/bare",
                route -> route.fulfill(new Route.FulfillOptions()
                        .setContentType("text/html; charset=utf-8")
                        .setBody(page)));
        sheet.page.navigate(Wayside.origin() + "/bare");
        return sheet;
    }

    /** A page with nothing on it but a card, whose service is the server that sends the page. */
    static String pageWith(String starter) {
        return BARE.formatted(starter);
    }

    static Sheet at(String url, int width) {
        return at(new Browser.NewContextOptions(), url, width);
    }

    static Sheet at(Browser.NewContextOptions options, String url, int width) {
        Sheet sheet = new Sheet(options, width);
        sheet.page.navigate(url);
        return sheet;
    }

    Page page() {
        return page;
    }

    BrowserContext reader() {
        return reader;
    }

    /** What the page's scripts complained of. */
    List<String> mistakes() {
        return mistakes;
    }

    Locator sentence() {
        return page.locator(".sentence");
    }

    Locator lines() {
        return page.locator("li.load");
    }

    Locator take() {
        return page.locator(".take");
    }

    Locator figure(String label) {
        return page.locator(".figure").filter(new Locator.FilterOptions().setHas(page.getByText(label, exactText())));
    }

    Locator labelled(String label) {
        return page.getByLabel(label, new Page.GetByLabelOptions().setExact(true));
    }

    Locator button(String name) {
        return page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName(name));
    }

    /** The answer has come. */
    void awaitAnswer() {
        page.locator(".picture.day").waitFor();
    }

    /** So have the pictures that are asked for after it. */
    void awaitPictures() {
        page.locator(".picture.charge:not(.old)").waitFor();
        page.locator(".picture.recharge:not(.old)").waitFor();
        page.locator(".picture.sunbymonth:not(.old)").waitFor();
    }

    /** Everything that folds; of the reasons, which are all drawn alike and each asked for, the first three. */
    void openAll() {
        page.locator("wayside-planner").evaluate("""
                        card => {
                          const folds = [...card.shadowRoot.querySelectorAll('details')];
                          const reasons = folds.filter((one) => one.classList.contains('why'));
                          folds.filter((one) => !reasons.includes(one)).concat(reasons.slice(0, 3))
                            .forEach((one) => { one.open = true; });
                        }""");
    }

    private static Page.GetByTextOptions exactText() {
        return new Page.GetByTextOptions().setExact(true);
    }

    @Override
    public void close() {
        reader.close();
    }
}
