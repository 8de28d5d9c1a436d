package wayside.sizing.trace;

import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * A default for something that the request left open.
 *
 * @param path JSON Pointer of the field that overrides it
 * @param reason one sentence: why this value
 */
public record Assumed(String label, Quantity quantity, String path, String reason, Source source) implements Derived {
    /** This default, unless the request gives a figure for it. */
    public Derived unlessGiven(OptionalDouble given) {
        return given.isPresent() ? Derived.given(label, given.getAsDouble(), unit(), path) : this;
    }

    /** This default, unless the request gives a count for it. */
    public Derived unlessGiven(OptionalInt given) {
        return given.isPresent() ? Derived.given(label, given.getAsInt(), unit(), path) : this;
    }
}
