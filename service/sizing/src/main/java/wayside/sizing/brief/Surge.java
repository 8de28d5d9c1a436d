package wayside.sizing.brief;

/** What one piece of a load draws for a moment when it starts. */
public sealed interface Surge {
    /** @param surgeW [W], at least the running power */
    record Watts(double surgeW) implements Surge {}

    /** @param factor multiple of the running power, at least 1 */
    record Factor(double factor) implements Surge {}
}
