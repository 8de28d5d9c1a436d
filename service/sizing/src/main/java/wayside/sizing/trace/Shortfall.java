package wayside.sizing.trace;

/**
 * Why no system fits, in figures of one unit.
 *
 * @param code stable, kebab-case: {@code array-too-small}
 * @param text what is short, and what would help
 * @param needed by the loads and the trip
 * @param available in what was given, or on Earth
 */
public record Shortfall(String code, String text, Derived needed, Derived available) {}
