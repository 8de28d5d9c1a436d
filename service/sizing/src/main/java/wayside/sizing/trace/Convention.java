package wayside.sizing.trace;

/**
 * A value that stands fixed: a practice of the trade or a choice of this service that no field of a request changes.
 *
 * @param reason one sentence: why this value
 */
public record Convention(String label, Quantity quantity, String reason, Source source) implements Derived {}
