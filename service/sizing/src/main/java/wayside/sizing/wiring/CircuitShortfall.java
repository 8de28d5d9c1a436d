package wayside.sizing.wiring;

import wayside.sizing.trace.Derived;

/**
 * Why no conductor or fuse of the tables will do.
 *
 * @param code stable: {@code no-conductor}, {@code no-fuse-rating}, {@code no-fuse-type}, {@code too-hot}
 * @param text what is short and what would help
 * @param needed what the circuit asks for
 * @param available the best of the tables, in the same unit
 */
public record CircuitShortfall(String code, String text, Derived needed, Derived available) {}
