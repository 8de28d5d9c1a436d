package wayside.server.problem;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One thing that is wrong with a request.
 *
 * @param pointer JSON Pointer (RFC 6901) of the field
 * @param code what is wrong, for a program
 * @param detail a sentence for people
 * @param received the value in JSON notation, shortened, or in words
 * @param value the value itself, if it is a number, a short text, true or false
 * @param accepted what would do, in words
 * @param minimum least value or length
 * @param maximum largest value or length
 * @param allowed the values or names of which one is taken
 * @param conflictsWith JSON Pointers of the fields that it does not go with
 * @param needs JSON Pointers of the fields that it means nothing without
 * @param nearest for an unknown field or code, the known one that may be put in its place, its value with it
 * @param meant for an unknown field, the known one that takes its place once the value was changed
 * @param factor by which the value is multiplied to be in the unit of the field that is meant
 * @param offset that is added after that
 * @param knownAt for an unknown field, JSON Pointer of the place where its name is known
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record Fault(
        String pointer,
        FaultCode code,
        String detail,
        String received,
        @Nullable Object value,
        String accepted,
        @Nullable Double minimum,
        @Nullable Double maximum,
        @Nullable List<Object> allowed,
        @Nullable List<String> conflictsWith,
        @Nullable List<String> needs,
        @Nullable String nearest,
        @Nullable String meant,
        @Nullable Double factor,
        @Nullable Double offset,
        @Nullable String knownAt) {

    /** One that says no more than where and what. */
    public static Draft of(String pointer, FaultCode code, String detail) {
        return new Draft(pointer, code, detail);
    }

    /** A fault while it is written. */
    public static final class Draft {
        private final String pointer;
        private final FaultCode code;
        private final String detail;
        private String received = "";
        private @Nullable Object value;
        private String accepted = "";
        private @Nullable Double minimum;
        private @Nullable Double maximum;
        private @Nullable List<Object> allowed;
        private @Nullable List<String> conflictsWith;
        private @Nullable List<String> needs;
        private @Nullable String nearest;
        private @Nullable String meant;
        private @Nullable Double factor;
        private @Nullable Double offset;
        private @Nullable String knownAt;

        private Draft(String pointer, FaultCode code, String detail) {
            this.pointer = pointer;
            this.code = code;
            this.detail = detail;
        }

        /** @param words the value in JSON notation, shortened, or in words */
        public Draft received(String words, @Nullable Object itself) {
            received = words;
            value = itself;
            return this;
        }

        public Draft accepted(String words) {
            accepted = words;
            return this;
        }

        public Draft between(@Nullable Double least, @Nullable Double most) {
            minimum = least;
            maximum = most;
            return this;
        }

        /** None of them when empty. */
        public Draft allowed(List<?> values) {
            allowed = values.isEmpty() ? null : List.copyOf(values);
            return this;
        }

        /** None of them when empty. */
        public Draft conflictsWith(List<String> pointers) {
            conflictsWith = pointers.isEmpty() ? null : List.copyOf(pointers);
            return this;
        }

        /** None of them when empty. */
        public Draft needs(List<String> pointers) {
            needs = pointers.isEmpty() ? null : List.copyOf(pointers);
            return this;
        }

        public Draft nearest(@Nullable String name) {
            nearest = name;
            return this;
        }

        public Draft meant(@Nullable String name) {
            meant = name;
            return this;
        }

        /** What the value is multiplied by and what is added then; null where that is not known. */
        public Draft times(@Nullable Double by, @Nullable Double plus) {
            factor = by;
            offset = plus;
            return this;
        }

        public Draft knownAt(@Nullable String place) {
            knownAt = place;
            return this;
        }

        public Fault done() {
            return new Fault(
                    pointer,
                    code,
                    detail,
                    received,
                    value,
                    accepted,
                    minimum,
                    maximum,
                    allowed,
                    conflictsWith,
                    needs,
                    nearest,
                    meant,
                    factor,
                    offset,
                    knownAt);
        }
    }
}
