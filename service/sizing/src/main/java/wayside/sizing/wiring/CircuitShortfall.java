package wayside.sizing.wiring;

import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Message;

/**
 * Why no conductor or fuse of the tables will do.
 *
 * @param message what is short and what would help
 * @param needed what the circuit asks for
 * @param available the best of the tables, in the same unit
 */
public record CircuitShortfall(Message message, Derived needed, Derived available) {
    /** Stable: {@code no-conductor}, {@code too-long}. */
    public String code() {
        return message.code().code();
    }
}
