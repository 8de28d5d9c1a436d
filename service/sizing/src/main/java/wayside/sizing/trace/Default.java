package wayside.sizing.trace;

import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * A value for something that the request left open.
 *
 * @param field JSON Pointer of the field that overrides it
 * @param reason one sentence: why this value
 */
public record Default(String label, Quantity quantity, String field, String reason, Source source) implements Derived {
    /** This default, unless the request gives a figure for it. */
    public Derived unlessGiven(OptionalDouble given) {
        return given.isPresent() ? Derived.given(label, given.getAsDouble(), unit(), field) : this;
    }

    /** This default, unless the request gives a count for it. */
    public Derived unlessGiven(OptionalInt given) {
        return given.isPresent() ? Derived.given(label, given.getAsInt(), unit(), field) : this;
    }
}
