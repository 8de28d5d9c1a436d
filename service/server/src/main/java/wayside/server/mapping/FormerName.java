package wayside.server.mapping;

import java.util.Map;

/** Fields of earlier contracts that stand elsewhere now, value and unit unchanged. */
final class FormerName {
    private static final Map<String, String> NOW = Map.of(
            "compartmentOffsetC", "/place/warmerByK",
            "bankLagHours", "/place/lagHours",
            "bankBox", "/place/box");

    private FormerName() {}

    /** Whether a request of the kind still has the place that it went to. */
    static boolean moved(String record, String name, RecordShape root) {
        return record.isEmpty()
                && NOW.containsKey(name)
                && root.fields().containsKey("place")
                && root.fields().get("place").kind() == FieldKind.OBJECT;
    }

    static Suggestion now(String name) {
        String pointer = NOW.getOrDefault(name, "");
        return new Suggestion(null, null, pointer, "; it is " + pointer + " now, in the same unit");
    }
}
