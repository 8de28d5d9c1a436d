package wayside.server;

import java.util.Set;

/** Faults of rules between fields, which JSON Schema cannot say: the descriptions tell them. */
final class BetweenFields {
    private static final Set<String> DETAILS = Set.of(
            "This does not go with what else is given.", "More than falls above the atmosphere there in that month.");

    private BetweenFields() {}

    /** Whether the detail of a fault is one of theirs. */
    static boolean tells(String detail) {
        return DETAILS.contains(detail);
    }
}
