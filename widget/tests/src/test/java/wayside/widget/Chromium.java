package wayside.widget;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Playwright;
import com.microsoft.playwright.assertions.PlaywrightAssertions;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;

/** One headless browser for the whole run: the system's own, nothing is downloaded. */
final class Chromium {
    private static final Path EXECUTABLE =
            Path.of(System.getenv().getOrDefault("WAYSIDE_TEST_BROWSER", "/usr/bin/chromium"));
    private static final List<String> ARGUMENTS = List.of(
            "--no-sandbox",
            "--disable-gpu",
            "--disable-quic",
            "--no-first-run",
            "--disable-background-networking",
            "--disable-component-update",
            "--disable-sync");

    private static final Playwright PLAYWRIGHT =
            Playwright.create(new Playwright.CreateOptions().setEnv(Map.of("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1")));
    private static final Browser BROWSER = PLAYWRIGHT
            .chromium()
            .launch(new BrowserType.LaunchOptions()
                    .setExecutablePath(EXECUTABLE)
                    .setArgs(ARGUMENTS));

    /** An answer may take its time where many things run at once. */
    private static final int MOST_MILLIS = 20_000;

    static {
        PlaywrightAssertions.setDefaultAssertionTimeout(MOST_MILLIS);
        Runtime.getRuntime().addShutdownHook(new Thread(PLAYWRIGHT::close));
    }

    private Chromium() {}

    /** A reader with nothing kept from before, in a window of this size. */
    static BrowserContext reader(int width, int height) {
        return reader(new Browser.NewContextOptions(), width, height);
    }

    static BrowserContext reader(Browser.NewContextOptions options, int width, int height) {
        return BROWSER.newContext(options.setViewportSize(width, height).setLocale("en-GB"));
    }
}
