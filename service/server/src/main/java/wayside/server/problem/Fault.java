package wayside.server.problem;

import org.jspecify.annotations.Nullable;

/**
 * One thing that is wrong with a request.
 *
 * @param pointer JSON Pointer (RFC 6901) of the field
 * @param detail a sentence for people
 * @param received the value in JSON notation, shortened, or in words
 * @param accepted what would do
 * @param nearest for an unknown field or code, the known one that may be put in its place, its value with it
 * @param knownAt for an unknown field, JSON Pointer of the place where its name is known
 */
public record Fault(
        String pointer,
        String detail,
        String received,
        String accepted,
        @Nullable String nearest,
        @Nullable String knownAt) {
    /** One of a field that is known where it stands. */
    public Fault(String pointer, String detail, String received, String accepted, @Nullable String nearest) {
        this(pointer, detail, received, accepted, nearest, null);
    }
}
