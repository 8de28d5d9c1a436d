package wayside.sizing.trace;

/**
 * Why no system fits, in figures of one unit.
 *
 * @param message what is short, and what would help
 * @param needed by the loads and the trip
 * @param available in what was given, or on Earth
 */
public record Shortfall(Message message, Derived needed, Derived available) {
    /** Stable, kebab-case: {@code array-too-small}. */
    public String code() {
        return message.code().code();
    }
}
