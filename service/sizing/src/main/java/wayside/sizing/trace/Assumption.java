package wayside.sizing.trace;

import java.util.Optional;

/**
 * A default that the request left open, in the words of the answer.
 *
 * @param field JSON Pointer of the field that overrides it
 * @param label what it is
 * @param value the value used, as text: {@code 0.9}, {@code abyc-e11}
 * @param unit its unit, when it is a number
 * @param reason why this value
 */
public record Assumption(String field, String label, String value, Optional<Unit> unit, String reason, Source source) {
    /** A default that is a choice and not a number: a rule set, a chemistry, a table. */
    public static Assumption choice(String field, String label, String value, String reason, Source source) {
        return new Assumption(field, label, value, Optional.empty(), reason, source);
    }

    static Assumption of(Assumed assumed) {
        double value = assumed.value();
        String text = value == Math.rint(value) && Math.abs(value) < 1e15
                ? Long.toString((long) value)
                : Double.toString(value);
        return new Assumption(
                assumed.path(),
                assumed.label(),
                text,
                assumed.unit() == Unit.COUNT ? Optional.empty() : Optional.of(assumed.unit()),
                assumed.reason(),
                assumed.source());
    }
}
