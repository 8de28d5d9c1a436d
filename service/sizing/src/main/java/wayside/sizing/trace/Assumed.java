package wayside.sizing.trace;

/**
 * A default for something that the request left open.
 *
 * @param path JSON Pointer of the field that overrides it
 * @param reason one sentence: why this value
 */
public record Assumed(String label, Quantity quantity, String path, String reason, Source source) implements Derived {}
