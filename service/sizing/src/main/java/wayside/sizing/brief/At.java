package wayside.sizing.brief;

/**
 * Where a thing was given: a JSON Pointer (RFC 6901) into the request, or into the larger request that it is a part of.
 *
 * @param pointer empty for the whole request; {@code /trip/stays/0}
 */
public record At(String pointer) {
    /** The whole request. */
    public static final At ROOT = new At("");

    /** The other part of a form: a file with a typical year. */
    public static final At TYPICAL_YEAR = ROOT.field("typicalYear");

    /** A field of the thing here. */
    public At field(String name) {
        return new At(pointer + '/' + name);
    }

    /** An entry of the list here. */
    public At entry(int index) {
        return new At(pointer + '/' + index);
    }
}
