package wayside.server.binding;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import com.fasterxml.jackson.core.io.JsonEOFException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import org.jspecify.annotations.Nullable;
import wayside.server.problem.Fault;
import wayside.server.problem.FaultCode;
import wayside.server.problem.Faults;
import wayside.server.problem.Problem;
import wayside.server.problem.ProblemException;
import wayside.server.problem.ProblemKind;

/**
 * Reads a body into a tree, strictly: well-formed, not too deep, no name twice in an object. What a request of this shape
 * can't use is read past and only counted, so that a tree stays small whatever comes.
 */
final class JsonReading {
    private static final int DEPTH = 32;
    /** Of an object that isn't known here: more of its names help nobody. */
    private static final int MOST_NAMES = Faults.LISTED;

    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;
    private static final JsonFactory FACTORY = JsonFactory.builder()
            .streamReadConstraints(StreamReadConstraints.builder()
                    .maxNestingDepth(DEPTH)
                    .maxNumberLength(100)
                    .maxNameLength(1000)
                    .maxStringLength(100_000)
                    .build())
            .disable(JsonFactory.Feature.INTERN_FIELD_NAMES)
            .build();

    private final JsonParser parser;
    private final Faults faults;

    private JsonReading(JsonParser parser, Faults faults) {
        this.parser = parser;
        this.faults = faults;
    }

    /** @throws ProblemException for a body that is not JSON, with line and column */
    static JsonNode read(byte[] body, Class<?> type, Faults faults) {
        if (body.length == 0) {
            throw new ProblemException(
                    Problem.at(ProblemKind.MALFORMED_JSON, "The body is empty; send a JSON object.", 1, 1));
        }
        try (JsonParser parser = FACTORY.createParser(body)) {
            return new JsonReading(parser, faults).whole(RecordShape.of(type));
        } catch (StreamConstraintsException e) {
            throw malformed(limit(e.getOriginalMessage()), e.getLocation());
        } catch (JsonEOFException e) {
            throw malformed("The body ends before the JSON does.", e.getLocation());
        } catch (JsonProcessingException e) {
            throw malformed(plain(e.getOriginalMessage()), e.getLocation());
        } catch (IOException e) {
            // What is left are bytes that are no text: the parser's own words for it name its classes.
            throw malformed("The body is not text in UTF-8.", null);
        }
    }

    private JsonNode whole(RecordShape shape) throws IOException {
        if (parser.nextToken() == null) {
            throw malformed("The body is empty; send a JSON object.", parser.currentLocation());
        }
        JsonNode root = parser.currentToken() == JsonToken.START_OBJECT ? object("", shape) : value("", null);
        if (parser.nextToken() != null) {
            throw malformed("Something follows after the end of the JSON value.", parser.currentTokenLocation());
        }
        return root;
    }

    /** @param field that the value is of; null for one that is not known */
    private JsonNode value(String pointer, @Nullable FieldShape field) throws IOException {
        return switch (parser.currentToken()) {
            case START_OBJECT -> object(pointer, shapeOf(field));
            case START_ARRAY -> array(pointer, field);
            case VALUE_STRING -> NODES.textNode(parser.getText());
            case VALUE_NUMBER_INT -> integer();
            case VALUE_NUMBER_FLOAT -> NODES.numberNode(parser.getDoubleValue());
            case VALUE_TRUE -> NODES.booleanNode(true);
            case VALUE_FALSE -> NODES.booleanNode(false);
            default -> NODES.nullNode();
        };
    }

    private static @Nullable RecordShape shapeOf(@Nullable FieldShape field) {
        return field != null && field.kind() == FieldKind.OBJECT ? RecordShape.of(field.type()) : null;
    }

    private JsonNode integer() throws IOException {
        return switch (parser.getNumberType()) {
            case INT -> NODES.numberNode(parser.getIntValue());
            case LONG -> NODES.numberNode(parser.getLongValue());
            default -> NODES.numberNode(parser.getDoubleValue());
        };
    }

    private ObjectNode object(String pointer, @Nullable RecordShape shape) throws IOException {
        ObjectNode object = NODES.objectNode();
        int unknown = 0;
        String name;
        while ((name = parser.nextFieldName()) != null) {
            parser.nextToken();
            FieldShape field = shape == null ? null : shape.fields().get(name);
            if (field == null && ++unknown > MOST_NAMES) {
                parser.skipChildren();
                faults.countOnly(shape == null ? 0 : 1);
            } else {
                put(object, pointer + "/" + Pointers.escape(name), name, field);
            }
        }
        return object;
    }

    private void put(ObjectNode object, String pointer, String name, @Nullable FieldShape field) throws IOException {
        JsonNode value = value(pointer, field);
        if (object.replace(name, value) != null) {
            faults.add(pointer, () -> Fault.of(
                            pointer, FaultCode.DUPLICATE_FIELD, "This name stands more than once in its object.")
                    .received(Received.text(value), Received.value(value))
                    .accepted("each name once")
                    .done());
        }
    }

    private ArrayNode array(String pointer, @Nullable FieldShape field) throws IOException {
        FieldShape element = field == null ? null : field.element();
        int longest = element == null || field == null ? 0 : field.longest();
        ArrayNode array = NODES.arrayNode();
        int size = 0;
        while (parser.nextToken() != JsonToken.END_ARRAY) {
            if (size < longest) {
                array.add(value(pointer + "/" + size, element));
            } else {
                parser.skipChildren();
            }
            size++;
        }
        return size > longest ? new UnreadList(size) : array;
    }

    private static ProblemException malformed(String detail, @Nullable JsonLocation where) {
        int line = where == null ? 1 : Math.max(1, where.getLineNr());
        int column = where == null ? 1 : Math.max(1, where.getColumnNr());
        return new ProblemException(Problem.at(
                ProblemKind.MALFORMED_JSON, detail + " Line " + line + ", column " + column + ".", line, column));
    }

    private static String limit(String message) {
        if (message.contains("nesting depth")) {
            return "Objects and lists are nested deeper than " + DEPTH + " levels.";
        }
        return message.contains("Number") ? "A number has too many digits." : "A name or a text is too long.";
    }

    /** The first sentence of the parser's message, which quotes the character and names no class. */
    private static String plain(String message) {
        String first = message.lines().findFirst().orElse("");
        if (first.contains("enable feature") || first.contains("JsonReadFeature") || first.contains("Non-standard")) {
            return "NaN and Infinity are not numbers of JSON.";
        }
        String words = first.replaceAll("\\(for [A-Za-z]+ starting at.*", "").replaceAll("\\s*\\[.*", "");
        String shortened = words.length() > 160 ? words.substring(0, 160) + "…" : words;
        return shortened.endsWith(".") ? shortened : shortened.strip() + ".";
    }
}
