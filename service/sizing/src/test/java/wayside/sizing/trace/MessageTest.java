package wayside.sizing.trace;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The core says what it has to say in codes and parameters, and has no words for it. */
class MessageTest {
    private static final Path SOURCES = Path.of("src/main/java");
    /** A text that ends in the middle or at its end as a sentence does. Labels, reasons and notes have no full stop. */
    private static final Pattern SENTENCE =
            Pattern.compile("\"(?:[^\"\\\\\n]|\\\\.)*[a-z)%]{2}(?<! ed)[.!?](?: [A-Z](?:[^\"\\\\\n]|\\\\.)*)?\"");

    private static final Pattern PARAMETER_TEXT =
            Pattern.compile("Parameter\\.text\\(\\s*\"[^\"]*\",\\s*([^;]*?)\\)\\s*[,);]");

    @Test
    void noSentenceStandsInTheCore() {
        assertThat("\"Drive or plug in. Run less\", \"Vent it.\"").containsPattern(SENTENCE);
        assertThat(found(SENTENCE)).isEmpty();
    }

    @Test
    void aTextOfAMessageIsTheNameOfSomething() {
        assertThat(found(PARAMETER_TEXT))
                .isNotEmpty()
                .allMatch(text -> text.matches("(?s).*\\.(name|title)\\(\\)?\\)+[,;]?"));
    }

    @Test
    void everyCodeIsUsed() {
        String all = String.join("\n", sources().stream().map(MessageTest::read).toList());
        assertThat(MessageCode.all())
                .hasSizeGreaterThan(60)
                .filteredOn(code -> !all.contains(code.getClass().getSimpleName() + "." + code.name()))
                .isEmpty();
    }

    @Test
    void aCodeIsOneOfItsKindAndEachOfItsParametersIsOne() {
        assertThat(MessageCode.all())
                .extracting(code -> code.kind() + "." + code.code())
                .doesNotHaveDuplicates();
        assertThat(MessageCode.all())
                .allSatisfy(
                        code -> assertThat(code.slots()).extracting(Slot::name).doesNotHaveDuplicates());
    }

    @Test
    void aMessageHasTheParametersOfItsCodeAndNoOther() {
        Parameter area = Parameter.number("area", 7, Unit.SQUARE_METRE);
        Parameter roof = Parameter.number("roof", 6, Unit.SQUARE_METRE);
        assertThat(Message.of(CautionCode.ARRAY_LARGER_THAN_ROOF, area, roof).find("area"))
                .hasValue(area);
        assertThatThrownBy(() -> Message.of(CautionCode.ARRAY_LARGER_THAN_ROOF, area))
                .hasMessageContaining("roof");
        assertThatThrownBy(() ->
                        Message.of(CautionCode.ARRAY_LARGER_THAN_ROOF, area, Parameter.number("roof", 6, Unit.METRE)))
                .hasMessageContaining("has no");
        assertThatThrownBy(() -> Message.of(CautionCode.MAINS, area)).hasMessageContaining("has no");
    }

    /** Where the sources make a message of a code they name no parameter that it lacks. */
    @Test
    void noMessageOfTheSourcesHasAParameterThatItsCodeLacks() {
        List<String> wrong = new ArrayList<>();
        int made = 0;
        for (MessageCode code : MessageCode.all()) {
            String constant = code.getClass().getSimpleName() + "." + code.name();
            for (String call : calls(constant)) {
                made++;
                List<String> names = Pattern.compile("(?:Parameter\\.\\w+|distance)\\(\\s*\"(\\w+)\"")
                        .matcher(call)
                        .results()
                        .map(MatchResult::group)
                        .map(text -> text.replaceAll("(?s).*\"(\\w+)\"", "$1"))
                        .toList();
                if (names.stream().anyMatch(name -> code.findSlot(name).isEmpty())) {
                    wrong.add(constant + " " + names);
                }
            }
        }
        assertThat(made).isGreaterThan(60);
        assertThat(wrong).isEmpty();
    }

    /** From each place where the constant stands to the end of the call that it is an argument of. */
    private static List<String> calls(String constant) {
        List<String> calls = new ArrayList<>();
        for (Path file : sources()) {
            String text = read(file);
            Matcher places =
                    Pattern.compile("\\b" + Pattern.quote(constant) + "\\b").matcher(text);
            while (places.find()) {
                calls.add(text.substring(places.end(), endOfCall(text, places.end())));
            }
        }
        return calls;
    }

    private static int endOfCall(String text, int from) {
        int depth = 0;
        int at = from;
        while (at < text.length() && depth >= 0) {
            char next = text.charAt(at++);
            depth += next == '(' ? 1 : next == ')' ? -1 : 0;
        }
        return at;
    }

    private static List<String> found(Pattern pattern) {
        return sources().stream()
                .flatMap(file ->
                        pattern.matcher(read(file)).results().map(one -> file.getFileName() + ": " + one.group()))
                .toList();
    }

    private static List<Path> sources() {
        try (Stream<Path> files = Files.walk(SOURCES)) {
            return files.filter(file -> file.toString().endsWith(".java")).toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
