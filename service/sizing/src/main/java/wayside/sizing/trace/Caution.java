package wayside.sizing.trace;

import java.util.Optional;

/**
 * Something a person must know before they build: what can happen, what to do, whom to ask.
 *
 * @param field JSON Pointer of the field of the request that it is about, when it is about one
 */
public record Caution(Message message, Severity severity, Source source, Optional<String> field) {
    /** A caution about the whole. */
    public Caution(Message message, Severity severity, Source source) {
        this(message, severity, source, Optional.empty());
    }

    /** A caution of the trade about the whole. */
    public static Caution commonPractice(Severity severity, CautionCode code, Parameter... parameters) {
        return new Caution(Message.of(code, parameters), severity, Source.commonPractice());
    }

    /** The same about a field of the request. */
    public Caution at(String pointer) {
        return new Caution(message, severity, source, Optional.of(pointer));
    }

    /** Stable, kebab-case: {@code cold-charging}. */
    public String code() {
        return message.code().code();
    }
}
