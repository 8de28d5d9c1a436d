package wayside.sizing.trace;

import java.util.List;

/**
 * A value worked out from other traced values.
 *
 * @param method the expression that was evaluated, or the operation that was done
 * @param inputs all that the method needs; the inputs of one symbol are a list, in order
 */
public record Computed(String label, Quantity quantity, Method method, List<Input> inputs) implements Derived {
    public Computed {
        inputs = List.copyOf(inputs);
    }

    @Override
    public Source source() {
        return method.source();
    }
}
