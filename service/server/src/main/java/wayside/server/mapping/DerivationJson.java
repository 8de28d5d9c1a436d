package wayside.server.mapping;

import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import wayside.sizing.trace.Source;
import wayside.sizing.trace.Step;

/**
 * A derivation as JSON. It is most of an answer, so it is put together from pieces: texts that come again in every answer
 * were made into JSON once, and what a step says of its result is said again, byte for byte, where it is an input. What a
 * step looks like is for {@link wayside.server.api.StepView} to say: a test holds this against the plain writing of it.
 */
final class DerivationJson {
    private static final byte[] ID = bytes("{\"id\":");
    private static final byte[] LABEL = bytes(",\"label\":");
    private static final JsonPieces FORMULAS = new JsonPieces(",\"formula\":");
    private static final byte[] INPUTS = bytes(",\"inputs\":[");
    private static final JsonPieces NAMES = new JsonPieces("{\"name\":");
    private static final byte[] FROM = bytes(",\"from\":");
    private static final byte[] INPUTS_END = bytes("]");
    private static final byte[] VALUE = bytes(",\"value\":");
    private static final JsonPieces UNITS = new JsonPieces(",\"unit\":");
    private static final JsonPieces BASES = new JsonPieces(",\"basis\":");
    private static final JsonPieces TITLES = new JsonPieces(",\"title\":");
    private static final JsonPieces CLAUSES = new JsonPieces(",\"clause\":");
    private static final byte[] REASON = bytes(",\"reason\":");
    private static final byte[] END = bytes("}");
    private static final byte[] COMMA = bytes(",");

    /** Where a step's id stands, and its value with the unit. */
    private record Said(int id, int idEnd, int value, int valueEnd) {}

    private final JsonText json;
    private final Map<String, Said> saidById = new HashMap<>(1_000);

    DerivationJson(JsonText json) {
        this.json = json;
    }

    /** Adds the steps, one after the other, parted by commas. */
    void write(List<Step> steps) {
        for (int i = 0; i < steps.size(); i++) {
            comma(i > 0);
            step(steps.get(i));
        }
    }

    private void step(Step step) {
        json.add(ID);
        int id = json.size();
        json.string(step.id());
        int idEnd = json.size();
        json.add(LABEL);
        json.string(step.label());
        piece(FORMULAS, step.formula());
        json.add(INPUTS);
        inputs(step.inputs());
        json.add(INPUTS_END);
        int value = json.size();
        json.add(VALUE);
        json.number(step.result().value());
        json.add(UNITS.of(step.result().unit().symbol()));
        saidById.put(step.id(), new Said(id, idEnd, value, json.size()));
        ground(step);
        json.add(END);
    }

    private void inputs(List<Step.StepInput> inputs) {
        for (int i = 0; i < inputs.size(); i++) {
            comma(i > 0);
            Step.StepInput input = inputs.get(i);
            Said said = Objects.requireNonNull(saidById.get(input.from()), "a step stands after those it uses");
            json.add(NAMES.of(input.symbol()));
            json.again(said.value(), said.valueEnd());
            json.add(FROM);
            json.again(said.id(), said.idEnd());
            json.add(END);
        }
    }

    private void ground(Step step) {
        Source source = step.source();
        json.add(BASES.of(source.basis().code()));
        json.add(TITLES.of(source.title()));
        piece(CLAUSES, source.clause());
        step.reason().ifPresent(reason -> {
            json.add(REASON);
            json.string(reason);
        });
    }

    private void piece(JsonPieces pieces, Optional<String> text) {
        if (text.isPresent()) {
            json.add(pieces.of(text.get()));
        }
    }

    private void comma(boolean between) {
        if (between) {
            json.add(COMMA);
        }
    }

    private static byte[] bytes(String json) {
        return json.getBytes(StandardCharsets.US_ASCII);
    }
}
