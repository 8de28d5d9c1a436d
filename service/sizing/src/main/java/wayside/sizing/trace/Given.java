package wayside.sizing.trace;

/**
 * A value the request stated.
 *
 * @param path JSON Pointer of the field: {@code /loads/0/powerW}
 */
public record Given(String label, Quantity quantity, String path) implements Derived {
    @Override
    public Source source() {
        return Source.given();
    }
}
