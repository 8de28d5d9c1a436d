package wayside.sizing.trace;

import java.util.ArrayList;
import java.util.Collection;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Optional;

/** The steps that lead to a set of results, each after the steps that it uses. What says the same is one step. */
public final class Derivation {
    private final IdentityHashMap<Derived, Step> found = new IdentityHashMap<>(700);
    private final Steps steps = new Steps();
    private final Assumptions assumptions = new Assumptions();

    private Derivation() {}

    /** Walks from the results down to what was given, depth first, in the order of the inputs. */
    public static Derivation of(Collection<? extends Derived> results) {
        Derivation derivation = new Derivation();
        results.forEach(derivation::visit);
        return derivation;
    }

    public List<Step> steps() {
        return steps.all();
    }

    /** Each default that a result rests on, once. */
    public List<Assumption> assumptions() {
        return assumptions.all();
    }

    /** The id of the step that yields this very object, if a result rests on it. */
    public Optional<String> findStepId(Derived value) {
        return Optional.ofNullable(found.get(value)).map(Step::id);
    }

    private Step visit(Derived value) {
        Step known = found.get(value);
        if (known != null) {
            return known;
        }
        Step step = steps.add(step(value, value instanceof Computed computed ? inputs(computed) : List.of()));
        found.put(value, step);
        if (value instanceof Assumed assumed) {
            assumptions.add(assumed);
        }
        return step;
    }

    private List<Step.StepInput> inputs(Computed computed) {
        List<Step.StepInput> inputs = new ArrayList<>(computed.inputs().size());
        for (Input input : computed.inputs()) {
            Step from = visit(input.value());
            inputs.add(new Step.StepInput(input.symbol(), from.result(), from.id()));
        }
        return inputs;
    }

    private static Step step(Derived value, List<Step.StepInput> inputs) {
        return new Step("", value.label(), formula(value), inputs, value.quantity(), value.source(), reason(value));
    }

    private static Optional<String> formula(Derived value) {
        return value instanceof Computed computed
                ? Optional.of(computed.formula().text())
                : Optional.empty();
    }

    private static Optional<String> reason(Derived value) {
        if (value instanceof Given given) {
            return Optional.of(given.path());
        }
        if (value instanceof Assumed assumed) {
            return Optional.of(assumed.reason());
        }
        if (value instanceof LookedUp lookedUp) {
            return Optional.of(lookedUp.table() + ", " + lookedUp.row());
        }
        return Optional.empty();
    }
}
