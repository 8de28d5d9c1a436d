package wayside.widget;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The widget's own sums, run in the browser from the source modules: units, rounding, numbers as typed, windows. */
class LogicTest {
    private static PlainServer sources;
    private static BrowserContext reader;
    private static Page page;

    @BeforeAll
    static void openAPageOfTheirOrigin() {
        sources =
                PlainServer.ofFolder(Path.of("../src/main/js").toAbsolutePath().normalize());
        reader = Chromium.reader(800, 600);
        page = reader.newPage();
        page.navigate(sources.origin() + "/wayside.js");
    }

    @AfterAll
    static void close() {
        reader.close();
        sources.close();
    }

    private static Object call(String module, String function, Object... arguments) {
        return page.evaluate(
                "async ({module, name, given}) => (await import(module))[name](...given)",
                Map.of("module", "/" + module, "name", function, "given", arguments));
    }

    private record Shown(double number, String symbol) {}

    private static Shown shown(String module, String function, String numberField, Object... arguments) {
        Map<?, ?> shown = (Map<?, ?>) call(module, function, arguments);
        return new Shown(
                number(Objects.requireNonNull(shown.get(numberField))),
                Objects.requireNonNull(shown.get("symbol")).toString());
    }

    private static double number(Object value) {
        return ((Number) value).doubleValue();
    }

    // Source: NIST Handbook 44, appendix C: 1 foot = 0.3048 m, 1 pound = 0.453 592 37 kg, both exact;
    // 1 cubic foot = 28.316 85 dm3 as printed, 1 square foot = 929.0304 cm2 exact. Temperature by definition.
    @ParameterizedTest
    @CsvSource({
        "0.3048, m, 1, ft",
        "0.45359237, kg, 1, lb",
        "28.31685, L, 1, cu ft",
        "0.09290304, m2, 1, sq ft",
        "25.4, mm, 1, in",
        "100, C, 212, °F",
        "-40, C, -40, °F"
    })
    void convertsToUsCustomaryUnits(double value, String unit, double expected, String symbol) {
        Shown shown = shown("units.js", "shown", "value", value, unit, "us");

        assertThat(shown.number()).isCloseTo(expected, within(1e-6));
        assertThat(shown.symbol()).isEqualTo(symbol);
    }

    @ParameterizedTest
    @CsvSource({"3.7, m", "27.2, kg", "18, L", "1.9, m2", "-12.5, C", "120, W"})
    void comesBackFromUsUnitsUnchanged(double value, String unit) {
        Shown shown = shown("units.js", "shown", "value", value, unit, "us");

        assertThat(number(call("units.js", "toService", shown.number(), unit, "us")))
                .isCloseTo(value, within(1e-9));
    }

    // Common practice, no source: banks are spoken of in tens of amp-hours, panels in tens of watts.
    @ParameterizedTest
    @CsvSource({
        "221.0, Ah, 230, Ah",
        "230.0, Ah, 230, Ah",
        "374.1, W, 380, W",
        "2901, Wh, 3, kWh",
        "51.2, V, 52, V",
        "28.4, A, 29, A"
    })
    void neverRoundsANeedDown(double value, String unit, double expected, String symbol) {
        Shown rounded = shown("rounding.js", "atLeast", "number", value, unit, "metric");

        assertThat(rounded.number()).isEqualTo(expected);
        assertThat(rounded.symbol()).isEqualTo(symbol);
    }

    @ParameterizedTest
    @CsvSource({
        "'1.5', en, 1.5",
        "'1,5', en, 1.5",
        "'1,500', en, 1500",
        "'1.500', de, 1500",
        "'1,5', de, 1.5",
        "' 1 500 ', fr, 1500",
        "'-5', en, -5"
    })
    void readsANumberAsItIsTyped(String typed, String lang, double expected) {
        assertThat(number(call("numbers.js", "typedNumber", typed, lang))).isEqualTo(expected);
    }

    @Test
    void leavesTextThatIsNoNumberForTheServiceToJudge() {
        assertThat(call("numbers.js", "typedNumber", "a lot", "en")).isEqualTo("a lot");
        assertThat(call("numbers.js", "typedNumber", "  ", "en")).isNull();
    }

    @ParameterizedTest
    @CsvSource({"18:00, 23:00, 5", "22:00, 06:00, 8", "07:30, 07:30, 24", "23:45, 00:15, 0.5"})
    void measuresAWindowThatMayPassMidnight(String from, String to, double hours) {
        assertThat(number(call("windows.js", "windowHours", from, to))).isEqualTo(hours);
    }

    @ParameterizedTest
    @CsvSource({"0.032, 3 of 100", "0.5, 50 of 100", "0.004, fewer than 1 of 100", "0.0001, fewer than 1 of 100"})
    void saysAChanceAsPeopleCount(double share, String words) {
        assertThat(call("chances.js", "chanceInWords", share, "en")).isEqualTo(words);
    }

    @ParameterizedTest
    @CsvSource({
        "0.03, 0.01, 0.07, 'between 1 and 7 of 100'",
        "0.01, 0, 0.02, 'at most 2 of 100'",
        "0.001, 0, 0.004, ''",
        "0, 0, 0, ''"
    })
    void saysTheRangeOfAChanceByOneDenominator(double value, double low, double high, String words) {
        Map<String, Double> range = Map.of("value", value, "low", low, "high", high);
        assertThat(call("chances.js", "rangeInWords", range, "en")).isEqualTo(words);
    }

    // Source: RFC 9110, section 10.2.3: seconds, or an HTTP date.
    @Test
    void readsWhenToAskAgain() {
        double now = 1_000_000_000_000.0;
        assertThat(number(call("service.js", "secondsOf", "120", now))).isEqualTo(120);
        // 1 000 000 000 s after the epoch are Sunday 9 September 2001, 01:46:40.
        assertThat(number(call("service.js", "secondsOf", "Sun, 09 Sep 2001 01:47:10 GMT", now)))
                .isEqualTo(30);
        assertThat(call("service.js", "secondsOf", "soon", now)).isNull();
    }

    @Test
    void neverRoundsALittleToNothing() {
        assertThat(call("rounding.js", "rounded", 0.012, "h", "metric"))
                .hasToString("{number=0.1, symbol=h, decimals=1, under=true}");
        assertThat(call("rounding.js", "rounded", 0, "h", "metric"))
                .hasToString("{number=0, symbol=h, decimals=1, under=false}");
        assertThat(call("rounding.js", "rounded", 0.2, "C", "metric"))
                .hasToString("{number=0, symbol=°C, decimals=0, under=false}");
    }

    @ParameterizedTest
    @CsvSource({
        "/loads/1/powerW, loads.8.power",
        "/loads/0/windows/0/to, loads.7.windowTo",
        "/loads/0/windows/1/to, loads.7.againTo",
        "/loads/0/windows/1, loads.7.againFrom",
        "/trip/stays/0/ambient/meanC, stays.9.meanC",
        "/place/where, wishes.where",
        "/place/heater/powerW, wishes.heaterW",
        "/target/bankPricePerWh, wishes.bankPricePerKWh",
        "/loads/0, loads.7.name",
        "/trip/stays/0/place/latitude, stays.9.latitude",
        "/trip/stays/0/nights, stays.9.nights",
        "/system/panel/tiltDegrees, wishes.tiltDegrees",
        "/system/alternatorChargerA, wishes.alternatorChargerA"
    })
    void findsTheControlBehindAPointer(String pointer, String control) {
        assertThat(call("pointer.js", "controlOf", pointer, List.of(7, 8), List.of(9)))
                .isEqualTo(control);
    }

    @Test
    void ownsUpWhenNoControlStandsForAField() {
        assertThat(call("pointer.js", "controlOf", "/seed", List.of(7), List.of(9)))
                .isNull();
    }
}
