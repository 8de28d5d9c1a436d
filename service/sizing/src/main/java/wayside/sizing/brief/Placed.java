package wayside.sizing.brief;

/** A thing that knows where it was given. */
public interface Placed {
    /** Where it stands, or would stand if it had been given. */
    At at();

    /** The JSON Pointer of one of its fields. */
    default String at(String field) {
        return at().pointer() + '/' + field;
    }
}
