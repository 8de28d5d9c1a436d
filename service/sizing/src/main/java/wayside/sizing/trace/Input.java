package wayside.sizing.trace;

/** A traced value under the symbol that a formula uses for it. */
public record Input(String symbol, Derived value) {}
