package wayside.widget;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.ReducedMotion;
import java.nio.file.Path;

/** Writes pictures of the demo into a folder, to be looked at: phone and desktop, light and dark. */
final class Screenshots {
    private Screenshots() {}

    /** @param arguments the folder; {@code target/screenshots} if absent */
    public static void main(String[] arguments) {
        Path folder = Path.of(arguments.length > 0 ? arguments[0] : "target/screenshots");
        for (int width : new int[] {Sheet.PHONE, Sheet.DESKTOP}) {
            for (ColorScheme scheme : new ColorScheme[] {ColorScheme.LIGHT, ColorScheme.DARK}) {
                take(width, scheme, folder);
            }
        }
        System.exit(0);
    }

    private static void take(int width, ColorScheme scheme, Path folder) {
        Browser.NewContextOptions options =
                new Browser.NewContextOptions().setColorScheme(scheme).setReducedMotion(ReducedMotion.REDUCE);
        String name = width + "-" + scheme.name().toLowerCase(java.util.Locale.ROOT);
        try (Sheet sheet = Sheet.ofDemo(options, width)) {
            sheet.awaitPictures();
            sheet.page()
                    .screenshot(new Page.ScreenshotOptions()
                            .setPath(folder.resolve(name + "-page.png"))
                            .setFullPage(true));
            sheet.page()
                    .locator(".sheet")
                    .screenshot(new Locator.ScreenshotOptions().setPath(folder.resolve(name + "-card.png")));
        }
    }
}
