package wayside.sizing.brief;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Where the bank is to stand, as far as it was measured.
 *
 * @param at where it was given
 * @param box inside
 * @param volumeL inside [L], when only that is known
 */
public record Locker(At at, Optional<Box> box, OptionalDouble volumeL) implements Placed {
    /** Nothing is said; it would stand there. */
    public static Locker open(At at) {
        return new Locker(at, Optional.empty(), OptionalDouble.empty());
    }
}
