package wayside.server.http;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** RFC 7240 Prefer Header for HTTP, section 2: the grammar and its rules. */
class PreferenceTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '\'',
            value = {
                "return=minimal                                     | minimal",
                "Return = Minimal                                   | Minimal",
                "respond-async, wait=100, return=minimal            | minimal",
                "return=\"minimal\"                                 | minimal",
                "return=minimal; foo=\"some parameter\"             | minimal",
                "note=\"a, return=minimal\", return=representation  | representation",
                "note=\"a \\\" , return=minimal\", return=representation | representation",
                "return=representation, return=minimal              | representation",
                "return=\"\"                                        | ''",
                "return                                             | ''",
            })
    void readsAPreference(String header, String value) {
        assertThat(Preference.find(List.of(header), "return")).contains(value);
    }

    // Source: RFC 7240 section 2, the two examples that are said to be the same.
    @Test
    void takesSeveralHeadersForOneList() {
        assertThat(Preference.find(List.of("respond-async, wait=100", "handling=lenient"), "handling"))
                .contains("lenient");
        assertThat(Preference.find(List.of("handling=lenient, wait=100, respond-async"), "wait"))
                .contains("100");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {"respond-async", "returns=minimal", "''", ",,;=", "note=\"return=minimal"})
    void findsNoneWhereThereIsNone(String header) {
        assertThat(Preference.find(List.of(header), "return")).isEmpty();
    }
}
