package wayside.sizing.wiring;

import java.util.Optional;
import wayside.sizing.trace.Derived;

/**
 * What only some circuits have.
 *
 * @param count how many circuits of this kind there are; one if empty
 * @param startA what it carries for the moment in which the hardest load starts [A]
 * @param thinnest that its ends can take, where that is more than the rule set asks
 */
public record CircuitDetails(Optional<Derived> count, Optional<Derived> startA, Optional<Gauge> thinnest) {
    public static final CircuitDetails NONE = new CircuitDetails(Optional.empty(), Optional.empty(), Optional.empty());

    /** So many of the same circuit. */
    public CircuitDetails times(Derived howMany) {
        return new CircuitDetails(Optional.of(howMany), startA, thinnest);
    }

    /** A circuit of loads that start harder than they run. */
    public CircuitDetails starting(Derived currentA) {
        return new CircuitDetails(count, Optional.of(currentA), thinnest);
    }

    /** A circuit that ends in large lugs. */
    public CircuitDetails atLeast(Gauge gauge) {
        return new CircuitDetails(count, startA, Optional.of(gauge));
    }
}
