package wayside.sizing.wiring;

import java.util.List;
import java.util.Optional;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Message;

/**
 * The fuse of a circuit.
 *
 * @param ratingA standard rating [A]
 * @param link the first kind that passes the checks of rating, voltage and breaking capacity
 * @param letThroughA2s heat that it lets through while it opens, where its times are tabulated [A2s]
 * @param refused the kinds that don't, each with the check that it fails
 */
public record SizedFuse(Derived ratingA, FuseLink link, Optional<Derived> letThroughA2s, List<Refusal> refused) {
    public SizedFuse {
        refused = List.copyOf(refused);
    }

    /** A kind of fuse that must not be used here, and why. */
    public record Refusal(FuseLink link, Message reason) {}
}
