package wayside.server.problem;

import org.jspecify.annotations.Nullable;

/**
 * One thing that is wrong with a request.
 *
 * @param pointer JSON Pointer (RFC 6901) of the field
 * @param detail a sentence for people
 * @param received the value in JSON notation, shortened, or in words
 * @param accepted what would do
 * @param nearest for an unknown field, the known name that is most like it
 */
public record Fault(
        String pointer,
        String detail,
        String received,
        String accepted,
        @Nullable String nearest) {}
