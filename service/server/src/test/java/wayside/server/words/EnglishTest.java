package wayside.server.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import wayside.sizing.trace.AdviceCode;
import wayside.sizing.trace.CautionCode;
import wayside.sizing.trace.ChangeCode;
import wayside.sizing.trace.Message;
import wayside.sizing.trace.MessageCode;
import wayside.sizing.trace.Parameter;
import wayside.sizing.trace.Quantity;
import wayside.sizing.trace.Slot;
import wayside.sizing.trace.Unit;

/** Whatever the core can tell has English words, and they are filled with its parameters and no others. */
class EnglishTest {
    private static final Path FILE = Path.of("src/main/resources/wayside/server/words/en.properties");

    @Test
    void everyCodeHasWordsAndAllWordsHaveACode() {
        assertThat(MessageCode.all()).extracting(English::key).containsExactlyInAnyOrderElementsOf(English.keys());
    }

    @Test
    void everyPlaceIsAParameterAndEveryParameterHasAPlace() {
        assertThat(MessageCode.all()).allSatisfy(code -> {
            Sentence sentence = English.sentence(code);
            assertThat(sentence.needed()).as(English.key(code)).containsExactlyInAnyOrderElementsOf(names(code, true));
            assertThat(sentence.optional())
                    .as(English.key(code))
                    .containsExactlyInAnyOrderElementsOf(names(code, false));
        });
    }

    private static List<String> names(MessageCode code, boolean needed) {
        return code.slots().stream()
                .filter(slot -> slot.needed() == needed)
                .map(Slot::name)
                .toList();
    }

    @Test
    void noCodeHasWordsTwice() throws IOException {
        assertThat(Files.readAllLines(FILE))
                .filteredOn(line -> line.contains(" = "))
                .extracting(line -> line.substring(0, line.indexOf(' ')))
                .doesNotHaveDuplicates();
    }

    @Test
    void wordsAreSetAsInABook() throws IOException {
        assertThat(Files.readAllLines(FILE))
                .noneMatch(line -> line.matches(".*(\"|[0-9] C\\b|[0-9]F\\b|m2|\\.\\.|  | $).*"));
    }

    // Common practice, no source: three digits, thousands parted, whole degrees.
    @ParameterizedTest
    @CsvSource({
        "4190, WATT_HOUR, '4,190 Wh'",
        "1234567.4, WATT_HOUR, '1,234,567 Wh'",
        "99.96, VOLT, 100 V",
        "14.25, VOLT, 14.3 V",
        "14.0, VOLT, 14 V",
        "3.021, PERCENT, 3.02 %",
        "0.05, AMPERE, 0.05 A",
        "1, DAY, 1 day",
        "2, DAY, 2 days",
        "0.5, DAY, 0.5 days",
        "1, HOUR, 1 hour",
        "2000, COUNT, '2,000'",
        "-3.7, CELSIUS, -4 °C",
        "-0.4, CELSIUS, 0 °C",
        "35.4, DEGREE, 35°",
        "15, KELVIN, 15 K",
        "7.44, SQUARE_METRE, 7.44 m²",
        "120.4, SQUARE_CENTIMETRE, 120 cm²",
        "0.2, SHARE, 20 %",
        "0.004, SHARE, 0.4 %"
    })
    void roundsAsPeopleDo(double value, Unit unit, String told) {
        assertThat(PlainFigure.of(new Quantity(value, unit))).isEqualTo(told);
    }

    @ParameterizedTest
    @CsvSource({
        "12, COUNT, month, December",
        "3, COUNT, clock, 03:00",
        "13, COUNT, clock, 13:00",
        "0.955, SHARE, ratio, 0.96",
        "0, SHARE, trips, none of the trips that were tried",
        "0.0002, SHARE, trips, fewer than 1 in 100 such trips",
        "0.0099, SHARE, trips, fewer than 1 in 100 such trips",
        "0.034, SHARE, trips, 3 in 100 such trips",
        "8.1, SQUARE_CENTIMETRE, up, 9 cm²"
    })
    void hasStylesOfItsOwn(double value, Unit unit, String style, String told) {
        assertThat(PlainFigure.of(new Quantity(value, unit), style)).isEqualTo(told);
    }

    @Test
    void whatIsInBracketsIsSaidWhenItIsKnown() {
        Message open = Message.of(CautionCode.LEAD_ACID_VENTILATION);
        assertThat(English.text(open)).contains("above and below, sealed");
        assertThat(English.text(open.with(Parameter.number("opening", 11.2, Unit.SQUARE_CENTIMETRE))))
                .contains("above and below, with openings of about 12 cm² each, sealed");
    }

    @Test
    void listsMonthsByName() {
        Message doubt = Message.of(
                CautionCode.IRRADIATION_WITHOUT_SUN, Parameter.numbers("months", List.of(11, 12, 1), Unit.COUNT));
        assertThat(English.text(doubt)).startsWith("In November, December and January the sun doesn't rise");
    }

    @ParameterizedTest
    @EnumSource(AdviceCode.class)
    void anAdviceNamesTheChangeThatHelpsMost(AdviceCode code) {
        Message advice = Message.of(
                        code,
                        Parameter.number("battery", 1880, Unit.WATT_HOUR),
                        Parameter.number("panel", 400, Unit.WATT),
                        Parameter.number("chance", 0.03, Unit.SHARE))
                .with(Parameter.inner(
                        "change", Message.of(ChangeCode.MORE_DRIVING, Parameter.number("hours", 1, Unit.HOUR))))
                .with(Parameter.number("changedChance", 0.002, Unit.SHARE));
        assertThat(English.text(advice))
                .startsWith("With 1,880 Wh of battery and 400 W of panel you run flat on 3 in 100 such trips")
                .endsWith("What helps most: 1 hour more driving each day makes that fewer than 1 in 100 such trips.");
    }

    @Test
    void aNameIsPutInAsItIs() {
        assertThat(English.text(Message.of(CautionCode.UNITS_MIXED_UP, Parameter.text("load", "a {b} [c] \\ %s"))))
                .startsWith("Look at “a {b} [c] \\ %s” again");
    }
}
