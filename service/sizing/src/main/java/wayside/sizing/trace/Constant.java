package wayside.sizing.trace;

/** A fixed figure of an expression, declared with its unit: the 100 Ah of {@code R = r C_0 / C}. */
public record Constant(String symbol, Quantity quantity) {}
