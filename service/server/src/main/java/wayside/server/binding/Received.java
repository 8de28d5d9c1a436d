package wayside.server.binding;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.TextNode;
import org.jspecify.annotations.Nullable;

/** What came, in JSON notation or in words, never long. */
final class Received {
    private static final int LONGEST = 80;

    private Received() {}

    static String text(@Nullable JsonNode value) {
        if (value == null) {
            return "nothing";
        }
        return switch (value.getNodeType()) {
            case OBJECT -> "an object";
            case ARRAY -> "a list of " + value.size();
            case STRING -> string(value.textValue());
            case NUMBER -> Double.isInfinite(value.doubleValue()) ? "a number beyond 1.8e308" : value.asText();
            default -> value.asText();
        };
    }

    /** The value itself, if it is a number, a short text, true or false. */
    static @Nullable Object value(@Nullable JsonNode value) {
        if (value == null) {
            return null;
        }
        return switch (value.getNodeType()) {
            case NUMBER -> Double.isInfinite(value.doubleValue()) ? null : value.numberValue();
            case BOOLEAN -> value.booleanValue();
            case STRING -> value.textValue().length() > LONGEST ? null : value.textValue();
            default -> null;
        };
    }

    private static String string(String text) {
        return text.length() > LONGEST
                ? new TextNode(text.substring(0, LONGEST)) + "… (" + text.length() + " characters)"
                : new TextNode(text).toString();
    }
}
