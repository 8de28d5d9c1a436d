package wayside.sizing.brief;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The hookup that a vehicle plugs into.
 *
 * @param at where it was given
 * @param voltageV 120 or 230
 * @param hookupLimitA that its breaker lets through [A]
 * @param passThrough whether AC loads run straight off it while plugged in; yes if absent
 */
public record Mains(At at, OptionalDouble voltageV, OptionalDouble hookupLimitA, Optional<Boolean> passThrough)
        implements Placed {
    /** Nothing is said; it would stand there. */
    public static Mains open(At at) {
        return new Mains(at, OptionalDouble.empty(), OptionalDouble.empty(), Optional.empty());
    }
}
