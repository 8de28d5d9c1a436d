package wayside.widget;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Route;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.ReducedMotion;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.Consumer;

/**
 * Writes pictures into a folder, to be looked at: each state of the card on a phone and a desktop, light and dark, and the
 * printed sheet as a PDF.
 */
final class Screenshots {
    private final Path folder;
    private final Set<String> wanted;

    private Screenshots(Path folder, Set<String> wanted) {
        this.folder = folder;
        this.wanted = wanted;
    }

    /** @param arguments the folder, {@code target/screenshots} if absent; then the names of states, all if absent */
    public static void main(String[] arguments) {
        Path folder = Path.of(arguments.length > 0 ? arguments[0] : "target/screenshots");
        Screenshots screenshots = new Screenshots(
                folder,
                Set.copyOf(java.util.List.of(arguments).subList(Math.min(1, arguments.length), arguments.length)));
        try {
            screenshots.takeAll();
            System.exit(0);
        } catch (RuntimeException e) {
            e.printStackTrace();
            System.exit(1);
        }
    }

    private void takeAll() {
        for (int width : new int[] {Sheet.PHONE, Sheet.DESKTOP}) {
            for (ColorScheme scheme : new ColorScheme[] {ColorScheme.LIGHT, ColorScheme.DARK}) {
                takeEach(width, scheme);
            }
        }
        for (String starter : new String[] {"weekend van", "winter van", "workshop truck"}) {
            print(starter);
        }
    }

    private void takeEach(int width, ColorScheme scheme) {
        take("empty", "", width, scheme, sheet -> {});
        take("weekend", "weekend van", width, scheme, Sheet::awaitPictures);
        take("winter", "winter van", width, scheme, Sheet::awaitPictures);
        take("truck", "workshop truck", width, scheme, Sheet::awaitPictures);
        take("open", "winter van", width, scheme, sheet -> {
            sheet.awaitPictures();
            sheet.openAll();
        });
        take("hints", "winter van", width, scheme, sheet -> {
            sheet.lines().first().getByLabel("What", exactly()).fill("Fridge");
            sheet.lines().nth(1).getByLabel("What", exactly()).fill("CPAP");
            sheet.lines().nth(2).getByText("more").first().click();
            sheet.lines().nth(6).getByLabel("Supply").selectOption("dc");
            sheet.page().getByText("how cold it gets").click();
            sheet.page().getByText("where the battery stands").click();
            sheet.labelled("Mean of day and night").fill("-10");
            sheet.awaitPictures();
        });
        take("faulty", "weekend van", width, scheme, sheet -> {
            sheet.awaitPictures();
            sheet.lines().first().getByLabel("Hours a day").fill("-3");
            sheet.labelled("Latitude").fill("95");
            sheet.labelled("Latitude").blur();
            sheet.page().locator(".fault:not([hidden])").first().waitFor();
        });
        take("offline", "weekend van", width, scheme, sheet -> {
            sheet.awaitPictures();
            sheet.reader().setOffline(true);
            sheet.labelled("Nights").fill("5");
            sheet.page().locator(".offline").waitFor();
        });
        take("unfinished", "weekend van", width, scheme, sheet -> {
            sheet.awaitPictures();
            sheet.button("Add a line of your own").click();
            sheet.lines().last().getByLabel("What", exactly()).fill("Lamp");
        });
        take("working", "", width, scheme, sheet -> {
            sheet.page().route("**/v1/recommendation", route -> {});
            sheet.button("A weekend van").click();
        });
        refused(
                "busy",
                new Route.FulfillOptions().setStatus(503).setHeaders(Map.of("Retry-After", "30")),
                width,
                scheme);
        refused("missing", new Route.FulfillOptions().setStatus(404), width, scheme);
        refused(
                "signin",
                new Route.FulfillOptions().setContentType("text/html").setBody("<form>Sign in</form>"),
                width,
                scheme);
    }

    private void refused(String name, Route.FulfillOptions answer, int width, ColorScheme scheme) {
        take(name, "", width, scheme, sheet -> {
            sheet.page().route("**/v1/recommendation", route -> route.fulfill(answer));
            sheet.button("A weekend van").click();
            sheet.button("Ask again").waitFor();
        });
    }

    private static Locator.GetByLabelOptions exactly() {
        return new Locator.GetByLabelOptions().setExact(true);
    }

    private void take(String name, String starter, int width, ColorScheme scheme, Consumer<Sheet> ready) {
        if (!wanted.isEmpty() && !wanted.contains(name)) {
            return;
        }
        Browser.NewContextOptions options =
                new Browser.NewContextOptions().setColorScheme(scheme).setReducedMotion(ReducedMotion.REDUCE);
        try (Sheet sheet = Sheet.startedFrom(starter, options, width)) {
            ready.accept(sheet);
            String file = "%s-%d-%s.png".formatted(name, width, scheme.name().toLowerCase(Locale.ROOT));
            sheet.page()
                    .screenshot(new Page.ScreenshotOptions()
                            .setPath(folder.resolve(file))
                            .setFullPage(true));
        }
    }

    private void print(String starter) {
        String name = "print-" + starter.replace(' ', '-');
        if (!wanted.isEmpty() && !wanted.contains(name) && !wanted.contains("print")) {
            return;
        }
        try (Sheet sheet = Sheet.startedFrom(starter, new Browser.NewContextOptions(), Sheet.DESKTOP)) {
            sheet.awaitPictures();
            sheet.page()
                    .pdf(new Page.PdfOptions()
                            .setPath(folder.resolve(name + ".pdf"))
                            .setFormat("A4")
                            .setMargin(new com.microsoft.playwright.options.Margin()
                                    .setTop("12mm")
                                    .setBottom("12mm")
                                    .setLeft("12mm")
                                    .setRight("12mm")));
        }
    }
}
