package wayside.server.http;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.ObjectWriter;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import wayside.server.api.RecommendationRequest;
import wayside.server.mapping.Figures;
import wayside.server.mapping.RecommendationReader;
import wayside.server.mapping.RecommendationWriter;
import wayside.server.mapping.RequestReader;
import wayside.server.mapping.Tail;
import wayside.sizing.SystemSizer;
import wayside.sizing.trace.Answer;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Formula;
import wayside.sizing.trace.Input;
import wayside.sizing.trace.Source;
import wayside.sizing.trace.Unit;

/** The derivation is put together from pieces, and no byte of it differs from the plain writing of its records. */
class DerivationJsonTest {
    private static final ObjectMapper PLAIN = Json.plain().build();

    @Property(tries = 300)
    void anyDerivationIsWrittenAsItsRecordsAre(@ForAll("figures") List<Derived> figures)
            throws JsonProcessingException {
        assertIsWrittenPlainly(Tail.of(new Answer<>("", figures, List.of(), List.of()), Figures.explained()));
    }

    @Example
    void theExampleIsWrittenAsItsRecordsAre() throws IOException {
        byte[] request = Files.readAllBytes(Path.of("../../openapi/examples/recommendation.request.json"));
        var brief = RecommendationReader.read(new RequestReader().read(request, RecommendationRequest.class));
        assertIsWrittenPlainly(RecommendationWriter.write(SystemSizer.size(brief), Figures.explained()));
    }

    private static void assertIsWrittenPlainly(Record value) throws JsonProcessingException {
        ObjectWriter writer = Json.writer(value.getClass());
        assertThat(text(Json.bytes(writer, value))).isEqualTo(text(PLAIN.writeValueAsBytes(value)));
        assertThat(writer.writeValueAsString(value)).isEqualTo(PLAIN.writeValueAsString(value));
    }

    private static String text(byte[] json) {
        return new String(json, StandardCharsets.UTF_8);
    }

    @Provide
    Arbitrary<List<Derived>> figures() {
        return Combinators.combine(leaves().list().ofMinSize(1).ofMaxSize(6), texts(), texts(), numbers())
                .as(DerivationJsonTest::sums);
    }

    /** Each sum takes all that came before it. */
    private static List<Derived> sums(List<Derived> leaves, String label, String formula, double value) {
        List<Derived> figures = new ArrayList<>(leaves);
        for (int i = 0; i < 3; i++) {
            Input[] inputs = figures.stream().map(figure -> figure.as(label)).toArray(Input[]::new);
            figures.add(Derived.computed(label, value + i, Unit.WATT_HOUR, Formula.definition(formula), inputs));
        }
        return figures;
    }

    private static Arbitrary<Derived> leaves() {
        return Combinators.combine(texts(), numbers(), Arbitraries.of(Unit.class), texts(), Arbitraries.of(0, 1, 2))
                .as((label, value, unit, text, kind) -> switch (kind) {
                    case 0 -> Derived.given(label, value, unit, text);
                    case 1 -> Derived.assumed(label, value, unit, "/x", text, Source.commonPractice());
                    default -> Derived.lookedUp(label, value, unit, text, text, Source.standard(text, label));
                });
    }

    private static Arbitrary<Double> numbers() {
        return Arbitraries.oneOf(
                Arbitraries.doubles(), Arbitraries.integers().between(-999, 999).map(Integer::doubleValue));
    }

    /** Plain words, and all that JSON must escape or UTF-8 must spread; halves of pairs, which a client can send, too. */
    private static Arbitrary<String> texts() {
        return Arbitraries.oneOf(
                Arbitraries.strings().ascii().ofMaxLength(20),
                Arbitraries.strings().withCharRange('\u0000', '\uffff').ofMaxLength(8),
                Arbitraries.of("fridge: daily energy", "K\u00fchlschrank", "\ud83d\ude9a truck", "a\ud800b", "\udc00"));
    }
}
