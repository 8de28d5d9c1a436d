package wayside.server.mapping;

import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/** A string field whose values come again in every answer: titles, formulas, units. Each is made into JSON once. */
final class JsonPieces {
    /** There are a few hundred; the limit is there for texts that a typical year's file brings along. */
    private static final int LIMIT = 2_000;

    private final byte[] name;
    private final Map<String, byte[]> pieces = new ConcurrentHashMap<>();

    /**
     * Pieces of one field.
     *
     * @param name what stands before the string
     */
    JsonPieces(String name) {
        this.name = name.getBytes(StandardCharsets.US_ASCII);
    }

    byte[] of(String text) {
        byte[] known = pieces.get(text);
        if (known != null) {
            return known;
        }
        JsonText piece = new JsonText(name.length + text.length() + 2);
        piece.add(name);
        piece.string(text);
        if (pieces.size() < LIMIT) {
            pieces.put(text, piece.toBytes());
        }
        return piece.toBytes();
    }
}
