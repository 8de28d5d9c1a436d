package wayside.server.binding;

import org.jspecify.annotations.Nullable;

/**
 * What was probably meant by a name that is not known.
 *
 * @param meant the known name; null where none is near
 * @param nearest the same when it may be put in the other's place, and the value with it
 * @param change of the value in its place; null where that is not known
 * @param knownAt JSON Pointer of the place where the name itself is known
 * @param words to close a sentence with, or nothing
 */
record Suggestion(
        @Nullable String meant,
        @Nullable String nearest,
        @Nullable Change change,
        @Nullable String knownAt,
        String words) {
    /** Of a figure into other units: times the factor, plus the offset. */
    record Change(double factor, double offset) {}

    static final Suggestion NONE = new Suggestion(null, null, null, null, "");

    static Suggestion nearest(String name) {
        return new Suggestion(name, name, null, null, "; perhaps " + name + " is meant");
    }

    /** The value has to be changed too, so there is no name to paste. */
    static Suggestion inOtherUnits(String name, @Nullable Change change, String how) {
        return new Suggestion(name, null, change, null, "; perhaps " + name + " is meant: " + how);
    }

    /** The value is the same, in another place. */
    static Suggestion moved(String pointer) {
        return new Suggestion(null, null, null, pointer, "; it is " + pointer + " now, in the same unit");
    }

    static Suggestion elsewhere(String pointer) {
        return new Suggestion(null, null, null, pointer, "; it is known at " + pointer);
    }
}
