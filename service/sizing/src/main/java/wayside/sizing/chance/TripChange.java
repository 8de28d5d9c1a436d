package wayside.sizing.chance;

import java.util.Optional;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Message;

/**
 * A change to the trip, or to the bank's place, with which a smaller system is enough.
 *
 * @param change what is changed, and by how much
 * @param chance of running flat with it
 * @param chanceOneStepLess of running flat with half an hour less, a longer way between hookups, or a night more; none where
 *     there is no such step
 */
public record TripChange(Message change, Derived chance, Optional<Derived> chanceOneStepLess) {}
