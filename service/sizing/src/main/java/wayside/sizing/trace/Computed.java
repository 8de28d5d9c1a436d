package wayside.sizing.trace;

import java.util.List;

/** A value computed by one formula from other traced values. */
public record Computed(String label, Quantity quantity, Formula formula, List<Input> inputs) implements Derived {
    public Computed {
        inputs = List.copyOf(inputs);
    }

    @Override
    public Source source() {
        return formula.source();
    }
}
