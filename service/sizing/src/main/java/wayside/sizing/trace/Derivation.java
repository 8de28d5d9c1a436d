package wayside.sizing.trace;

import java.util.ArrayList;
import java.util.Collection;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Objects;

/** The steps that lead to a set of figures, each after the steps that it uses. What says the same is one step. */
public final class Derivation {
    private final IdentityHashMap<Derived, Step> found = new IdentityHashMap<>();
    private final Steps steps = new Steps();
    private final Assumptions assumptions = new Assumptions();

    private Derivation() {}

    /** Walks from the figures down to what was given, depth first, in the order of the inputs. */
    public static Derivation of(Collection<? extends Derived> figures) {
        Derivation derivation = new Derivation();
        figures.forEach(derivation::visit);
        return derivation;
    }

    /** Each default and convention that the figures rest on, without their steps. */
    public static List<Assumption> assumptions(Collection<? extends Derived> figures) {
        return Assumptions.of(figures);
    }

    public List<Step> steps() {
        return steps.all();
    }

    /** Each default and convention that a figure rests on, once. */
    public List<Assumption> assumptions() {
        return assumptions.all();
    }

    /**
     * The id of the step that yields this very object.
     *
     * @throws NullPointerException when no figure of the derivation rests on it
     */
    public String stepId(Derived value) {
        return Objects.requireNonNull(found.get(value), "no step of this derivation")
                .id();
    }

    private Step visit(Derived value) {
        Step known = found.get(value);
        if (known != null) {
            return known;
        }
        List<Step.StepInput> inputs = value instanceof Computed computed ? inputs(computed) : List.of();
        Step step = steps.add(value, inputs);
        found.put(value, step);
        assumptions.add(value);
        return step;
    }

    private List<Step.StepInput> inputs(Computed computed) {
        List<Step.StepInput> inputs = new ArrayList<>(computed.inputs().size());
        for (Input input : computed.inputs()) {
            inputs.add(new Step.StepInput(input.symbol(), visit(input.value()).id()));
        }
        return inputs;
    }
}
