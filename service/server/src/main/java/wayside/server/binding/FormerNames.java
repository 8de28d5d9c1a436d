package wayside.server.binding;

import java.util.Collection;
import java.util.Map;
import java.util.Optional;

/** Names that the contract once had, and what says the same today. */
final class FormerNames {
    /**
     * What says the same today.
     *
     * @param field takes its place
     * @param how what becomes of its value
     */
    private record Today(String field, String how) {}

    private static final Map<String, Today> TODAY =
            Map.of("essential", new Today("tier", "comfort where it was false, essential or vital where it was true"));

    /** What stands elsewhere today, value and unit unchanged. */
    private static final Map<String, String> MOVED = Map.of(
            "compartmentOffsetC", "place/warmerByK",
            "bankLagHours", "place/lagHours",
            "bankBox", "place/box");

    private FormerNames() {}

    /** What the name is called today, when the record has that field; its value has to be changed too. */
    static Optional<Suggestion> of(String name, Collection<String> known) {
        String moved = MOVED.get(name);
        if (moved != null && known.contains("place") && known.contains("trip")) {
            return Optional.of(Suggestion.moved("/" + moved));
        }
        return Optional.ofNullable(TODAY.get(name))
                .filter(today -> known.contains(today.field()))
                .map(today -> Suggestion.inOtherUnits(today.field(), null, today.how()));
    }
}
