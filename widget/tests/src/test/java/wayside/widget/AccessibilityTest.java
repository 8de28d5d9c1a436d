package wayside.widget;

import static org.assertj.core.api.Assertions.assertThat;

import com.deque.html.axecore.playwright.AxeBuilder;
import com.deque.html.axecore.results.Rule;
import com.microsoft.playwright.Browser;
import com.microsoft.playwright.Route;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.ReducedMotion;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The rules of axe-core (WCAG 2.2 A and AA, best practices): no violation, with everything that folds opened. */
class AccessibilityTest {
    @ParameterizedTest
    @CsvSource({"360, LIGHT", "360, DARK", "1280, LIGHT", "1280, DARK"})
    void passesEveryRuleAnswered(int width, ColorScheme scheme) {
        try (Sheet sheet = Sheet.ofDemo(settled(scheme), width)) {
            sheet.openAll();
            sheet.page().locator(".why .step").first().waitFor();

            assertThat(violations(sheet)).isEmpty();
        }
    }

    @ParameterizedTest
    @CsvSource({"360", "1280"})
    void passesEveryRuleEmptyAndRefused(int width) {
        try (Sheet sheet = Sheet.empty(width)) {
            assertThat(violations(sheet)).isEmpty();

            sheet.button("A weekend van").click();
            sheet.labelled("Latitude").fill("95");
            sheet.labelled("Latitude").blur();
            sheet.page().locator(".fault:not([hidden])").first().waitFor();

            assertThat(violations(sheet)).isEmpty();
        }
    }

    @ParameterizedTest
    @CsvSource({"360", "1280"})
    void passesEveryRuleUnfinishedAndWithoutAnAnswer(int width) {
        try (Sheet sheet = Sheet.empty(width)) {
            sheet.page()
                    .route(
                            "**/v1/recommendation",
                            route -> route.fulfill(
                                    new Route.FulfillOptions().setStatus(503).setHeaders(Map.of("Retry-After", "60"))));
            sheet.button("A weekend van").click();
            sheet.button("Add a line of your own").click();
            sheet.page().locator(".question").waitFor();
            sheet.button("Ask again").waitFor();

            assertThat(violations(sheet)).isEmpty();
        }
    }

    @ParameterizedTest
    @CsvSource({"360, DARK", "1280, LIGHT"})
    void passesEveryRuleWithWordsBesideALineAndFrost(int width, ColorScheme scheme) {
        try (Sheet sheet = Sheet.startedFrom("weekend van", settled(scheme), width)) {
            sheet.awaitPictures();
            sheet.openAll();
            sheet.lines().nth(2).locator(".name input").fill("CPAP");
            sheet.labelled("Mean of day and night").fill("-10");
            sheet.page().locator(".frost").waitFor();
            sheet.page().locator(".told button").waitFor();
            sheet.awaitPictures();

            assertThat(violations(sheet)).isEmpty();
        }
    }

    private static Browser.NewContextOptions settled(ColorScheme scheme) {
        return new Browser.NewContextOptions().setColorScheme(scheme).setReducedMotion(ReducedMotion.REDUCE);
    }

    private static List<String> violations(Sheet sheet) {
        return new AxeBuilder(sheet.page())
                .analyze().getViolations().stream().map(AccessibilityTest::said).toList();
    }

    private static String said(Rule rule) {
        return rule.getId() + ": "
                + rule.getNodes().stream()
                        .map(node -> node.getHtml() + " " + node.getFailureSummary())
                        .toList();
    }
}
