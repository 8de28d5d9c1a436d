package wayside.sizing.trace;

import java.util.Optional;

/**
 * Something a person must know before they build: what can happen, what to do, whom to ask.
 *
 * @param code stable, kebab-case: {@code cold-charging}
 * @param field JSON Pointer of the field of the request that it is about, when it is about one
 */
public record Caution(String code, Severity severity, String text, Source source, Optional<String> field) {
    /** A caution about the whole. */
    public Caution(String code, Severity severity, String text, Source source) {
        this(code, severity, text, source, Optional.empty());
    }

    /** The same about a field of the request. */
    public Caution at(String pointer) {
        return new Caution(code, severity, text, source, Optional.of(pointer));
    }
}
