package wayside.sizing.trace;

import java.util.Optional;

/**
 * Something that was not given, in the words of the answer: a default that a field overrides, or a convention that none
 * does.
 *
 * @param field JSON Pointer of the field that overrides it; empty for a convention
 * @param label what it is
 * @param value the value used, as text: {@code 0.9}, {@code abyc-e11}
 * @param quantity the same as a number, when it is one
 * @param reason why this value
 */
public record Assumption(
        Optional<String> field, String label, String value, Optional<Quantity> quantity, String reason, Source source) {
    /** A default that is a choice and not a number: a rule set, a chemistry, a table. */
    public static Assumption choice(String field, String label, String value, String reason, Source source) {
        return new Assumption(Optional.of(field), label, value, Optional.empty(), reason, source);
    }

    /** A choice that no field changes. */
    public static Assumption convention(String label, String value, String reason, Source source) {
        return new Assumption(Optional.empty(), label, value, Optional.empty(), reason, source);
    }

    /** A choice that the request left open: a default where a field of it could have said otherwise, else a convention. */
    public static Assumption leftOpen(
            Optional<String> field, String label, String value, String reason, Source source) {
        return new Assumption(field, label, value, Optional.empty(), reason, source);
    }

    static Assumption of(Default value) {
        return new Assumption(
                Optional.of(value.field()),
                value.label(),
                text(value.value()),
                Optional.of(value.quantity()),
                value.reason(),
                value.source());
    }

    static Assumption of(Convention value) {
        return new Assumption(
                Optional.empty(),
                value.label(),
                text(value.value()),
                Optional.of(value.quantity()),
                value.reason(),
                value.source());
    }

    private static String text(double value) {
        return value == Math.rint(value) && Math.abs(value) < 1e15
                ? Long.toString((long) value)
                : Double.toString(value);
    }
}
