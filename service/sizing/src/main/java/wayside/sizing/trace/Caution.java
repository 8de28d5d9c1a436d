package wayside.sizing.trace;

/**
 * Something a person must know before they build: what can happen, what to do, whom to ask.
 *
 * @param code stable, kebab-case: {@code cold-charging}
 */
public record Caution(String code, Severity severity, String text, Source source) {}
