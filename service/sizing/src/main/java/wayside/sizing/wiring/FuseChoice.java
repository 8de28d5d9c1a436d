package wayside.sizing.wiring;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.FuseRefusal;
import wayside.sizing.trace.Message;

/**
 * The kind of fuse for a rating: the first that is made for it, is rated for the circuit's highest voltage and breaks the
 * current of a short. Where only an estimate asks for more than any kind breaks, the sturdiest is taken: it is then to be
 * confirmed by the maker's figure.
 */
final class FuseChoice {
    private FuseChoice() {}

    static Optional<SizedFuse> find(CircuitDuty duty, Derived ratingA) {
        List<SizedFuse.Refusal> refused = new ArrayList<>();
        for (FuseLink link : FuseLink.all()) {
            Optional<Message> refusal =
                    findRefusal(duty, ratingA, link, duty.interruptA().value());
            if (refusal.isEmpty()) {
                return Optional.of(fuse(duty, ratingA, link, refused));
            }
            refused.add(new SizedFuse.Refusal(link, refusal.get()));
        }
        return duty.feed().isEstimated() ? sturdiest(duty, ratingA, refused) : Optional.empty();
    }

    private static Optional<SizedFuse> sturdiest(CircuitDuty duty, Derived ratingA, List<SizedFuse.Refusal> refused) {
        return FuseLink.all().stream()
                .filter(link -> findRefusal(duty, ratingA, link, 0).isEmpty())
                .max(Comparator.comparingDouble(link -> link.breakingA().value()))
                .map(best -> fuse(
                        duty,
                        ratingA,
                        best,
                        refused.stream()
                                .filter(refusal -> !refusal.link().equals(best))
                                .toList()));
    }

    private static SizedFuse fuse(CircuitDuty duty, Derived ratingA, FuseLink link, List<SizedFuse.Refusal> refused) {
        return new SizedFuse(
                ratingA,
                link,
                ShortCircuitHeat.letThroughA2s(duty.label("heat that the fuse lets through"), ratingA, link),
                refused);
    }

    private static Optional<Message> findRefusal(CircuitDuty duty, Derived ratingA, FuseLink link, double interruptA) {
        if (duty.feed() instanceof Feed.ParallelStrings && !link.isPhotovoltaic()) {
            return Optional.of(Message.of(FuseRefusal.NOT_PHOTOVOLTAIC));
        }
        if (link.isPhotovoltaic() && !isFedBySun(duty.feed())) {
            return Optional.of(Message.of(FuseRefusal.FOR_SOLAR_MODULES));
        }
        return link.findRefusal(ratingA.value(), duty.highestVoltageV().value(), interruptA);
    }

    /** An array says itself what a short of it draws. */
    private static boolean isFedBySun(Feed feed) {
        return feed instanceof Feed.ParallelStrings || feed instanceof Feed.ShortCircuit;
    }
}
