package wayside.sizing.trace;

import java.util.List;
import java.util.Optional;

/**
 * One step of a derivation, ready to print.
 *
 * @param id unique in the answer, readable, stable for the same request
 * @param formula in words and symbols; empty for what was given, assumed or looked up
 * @param inputs in the order of the formula
 * @param reason of an assumption; the table and row of what was looked up; the field of what was given
 */
public record Step(
        String id,
        String label,
        Optional<String> formula,
        List<StepInput> inputs,
        Quantity result,
        Source source,
        Optional<String> reason) {

    /** An input of a step and the id of the step it came from. */
    public record StepInput(String symbol, Quantity quantity, String from) {}

    Step withId(String newId) {
        return new Step(newId, label, formula, inputs, result, source, reason);
    }

    /** Whether nothing but the id tells them apart. */
    boolean saysTheSameAs(Step other) {
        return result.equals(other.result)
                && label.equals(other.label)
                && formula.equals(other.formula)
                && inputs.equals(other.inputs)
                && reason.equals(other.reason)
                && source.equals(other.source);
    }
}
