package wayside.sizing.trace;

import java.util.List;

/**
 * One step of a derivation, ready to print.
 *
 * @param id unique in the answer, readable, the same for the same thing whatever else is asked
 * @param value what it explains
 * @param inputs the ids of the steps that it uses, with their symbols, in the order of use; those of one symbol are a list
 */
public record Step(String id, Derived value, List<StepInput> inputs) {
    /** An input of a step: the symbol, and the id of the step that it comes from. */
    public record StepInput(String symbol, String from) {}

    public Step {
        inputs = List.copyOf(inputs);
    }

    /** Whether nothing but the id tells them apart. */
    boolean saysTheSameAs(Step other) {
        return inputs.equals(other.inputs) && sameValue(value, other.value);
    }

    private static boolean sameValue(Derived one, Derived other) {
        if (one instanceof Computed a && other instanceof Computed b) {
            return a.quantity().equals(b.quantity())
                    && a.label().equals(b.label())
                    && a.method().equals(b.method());
        }
        return one.equals(other);
    }
}
