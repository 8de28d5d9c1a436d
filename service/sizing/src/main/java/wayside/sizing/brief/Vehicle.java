package wayside.sizing.brief;

import java.util.OptionalDouble;

/**
 * What the vehicle brings, as far as the customer knows it.
 *
 * @param at where it was given
 * @param voltageV of the vehicle's own net: 12 or 24
 * @param alternatorRatingA on the label of its alternator [A]
 * @param payloadKg that is left for the whole system [kg]
 */
public record Vehicle(At at, OptionalDouble voltageV, OptionalDouble alternatorRatingA, OptionalDouble payloadKg)
        implements Placed {
    public Vehicle(At at, OptionalDouble voltageV, OptionalDouble alternatorRatingA) {
        this(at, voltageV, alternatorRatingA, OptionalDouble.empty());
    }

    /** Nothing is said; it would stand there. */
    public static Vehicle open(At at) {
        return new Vehicle(at, OptionalDouble.empty(), OptionalDouble.empty());
    }
}
