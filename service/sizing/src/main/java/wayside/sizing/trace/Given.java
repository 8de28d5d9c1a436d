package wayside.sizing.trace;

/**
 * A value the request stated.
 *
 * @param field its JSON Pointer: {@code /loads/0/powerW}
 */
public record Given(String label, Quantity quantity, String field) implements Derived {
    @Override
    public Source source() {
        return Source.given();
    }
}
