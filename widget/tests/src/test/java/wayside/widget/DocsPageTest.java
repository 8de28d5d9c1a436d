package wayside.widget;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The documentation page draws itself from the contract: the whole of it, whatever rule a record has. */
class DocsPageTest {
    @Test
    void drawsEveryOperationAndEveryPiece() {
        try (BrowserContext reader = Chromium.reader(1280, 900)) {
            Page page = reader.newPage();
            List<String> errors = new ArrayList<>();
            page.onPageError(errors::add);
            page.navigate(Wayside.origin() + "/docs/");
            JsonObject contract = JsonParser.parseString(reader.request()
                            .get(Wayside.origin() + "/openapi.json")
                            .text())
                    .getAsJsonObject();
            assertThat(page.locator("#operations > section"))
                    .hasCount(contract.getAsJsonObject("paths").size());
            assertThat(page.locator("#schemas h3"))
                    .hasCount(contract.getAsJsonObject("components")
                            .getAsJsonObject("schemas")
                            .size());
            assertThat(page.locator("#piece-RecommendationRequest"))
                    .containsText("runs or seed or skyUncertainty or spreadUncertainty or daySpread only with"
                            + " target/chanceOfRunningFlat.");
            assertThat(errors).isEmpty();
        }
    }
}
