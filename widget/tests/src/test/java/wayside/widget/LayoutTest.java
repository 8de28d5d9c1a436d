package wayside.widget;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.options.BoundingBox;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A 360 px phone, a column of a page, a desktop. */
class LayoutTest {
    private static final String SIDEWAYS =
            "document.documentElement.scrollWidth - document.documentElement.clientWidth";

    @ParameterizedTest
    @ValueSource(ints = {320, 360, 560, 768, 899, 1280, 1920})
    void neverScrollsSideways(int width) {
        try (Sheet sheet = Sheet.ofDemo(width)) {
            sheet.page().locator(".assumptions summary").click();
            sheet.figure("Energy a day").locator(".why > summary").click();

            assertThat(sheet.page().evaluate(SIDEWAYS)).isEqualTo(0);
        }
    }

    @Test
    void putsTheAnswerBesideTheListOnADesktopAndKeepsItInView() {
        try (Sheet sheet = Sheet.ofDemo(Sheet.DESKTOP)) {
            BoundingBox list = sheet.page().locator(".run").boundingBox();
            BoundingBox answer = sheet.take().boundingBox();
            assertThat(answer.x).isGreaterThan(list.x + list.width);
            assertThat(answer.y).isEqualTo(list.y);

            sheet.page().locator(".wishes").scrollIntoViewIfNeeded();

            assertThat(sheet.sentence()).isInViewport();
        }
    }

    @Test
    void carriesTheSentenceAtTheFootOfAPhoneAndLeadsToTheAnswer() {
        try (Sheet sheet = Sheet.ofDemo(Sheet.PHONE)) {
            sheet.lines().nth(2).scrollIntoViewIfNeeded();
            assertThat(sheet.page().locator(".strip")).isInViewport();
            assertThat(sheet.page().locator(".strip")).hasText(Pattern.compile("^A [\\d.,]+\\sAh .*"));

            sheet.page().locator(".strip").click();

            assertThat(sheet.sentence()).isInViewport();
            assertThat(sheet.page().locator(".strip")).isHidden();
        }
    }

    @Test
    void saysAtTheFootOfAPhoneThatNothingIsListedYet() {
        try (Sheet sheet = Sheet.empty(Sheet.PHONE)) {
            assertThat(sheet.page().locator(".strip")).hasText(Pattern.compile("^Nothing on the list yet.*"));
        }
    }

    @Test
    void stacksTheBandsInReadingOrderOnAPhone() {
        try (Sheet sheet = Sheet.ofDemo(Sheet.PHONE)) {
            double run = sheet.page().locator(".run").boundingBox().y;
            double go = sheet.page().locator(".go").boundingBox().y;
            double take = sheet.take().boundingBox().y;

            assertThat(run).isLessThan(go);
            assertThat(go).isLessThan(take);
        }
    }
}
