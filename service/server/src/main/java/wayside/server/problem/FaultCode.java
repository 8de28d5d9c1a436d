package wayside.server.problem;

import com.fasterxml.jackson.annotation.JsonValue;
import java.util.Locale;

/** What can be wrong with a field. */
public enum FaultCode {
    UNKNOWN_FIELD("The field is not known in this place."),
    DUPLICATE_FIELD("The name stands more than once in its object."),
    MISSING("The field, or one of those in allowed, must be given."),
    NULL("null is no value here; leave the field out."),
    WRONG_TYPE("The value is of another type of JSON; nothing is converted."),
    NOT_WHOLE("The number must be a whole one."),
    UNKNOWN_CODE("The value is none of those in allowed."),
    OUT_OF_RANGE("The number is below minimum, above maximum, or none of those in allowed."),
    WRONG_LENGTH("The list or text is shorter than minimum or longer than maximum."),
    WRONG_FORM("The text is not in the form that is read here."),
    DUPLICATE_NAME("An earlier one in the list has this name."),
    CONFLICT("The field does not go with what else is given: see conflictsWith where it names a field."),
    NEEDS("The field means something only beside those in needs."),
    WRAPPED("The request stands in an object of its own: send what is in it."),
    UNREADABLE_PART("The part of the form, or the file in it, cannot be read.");

    private final String words;

    FaultCode(String words) {
        this.words = words;
    }

    /** What it says, for a list of codes. */
    public String words() {
        return words;
    }

    /** Kebab-case, as it stands in a problem. */
    @JsonValue
    public String code() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
