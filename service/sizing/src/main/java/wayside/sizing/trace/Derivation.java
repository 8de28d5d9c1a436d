package wayside.sizing.trace;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The steps that lead to a set of results, each after the steps that it uses. */
public final class Derivation {
    private final IdentityHashMap<Derived, String> ids = new IdentityHashMap<>();
    private final Map<Derived, String> leaves = new HashMap<>();
    private final Map<String, Integer> uses = new HashMap<>();
    private final List<Step> steps = new ArrayList<>();
    private final Map<String, Assumption> assumptions = new LinkedHashMap<>();

    private Derivation() {}

    /** Walks from the results down to what was given, depth first, in the order of the inputs. */
    public static Derivation of(Collection<? extends Derived> results) {
        Derivation derivation = new Derivation();
        results.forEach(derivation::visit);
        return derivation;
    }

    public List<Step> steps() {
        return List.copyOf(steps);
    }

    /** Each default that a result rests on, once. */
    public List<Assumption> assumptions() {
        return List.copyOf(assumptions.values());
    }

    /** The id of the step that yields this very object, if a result rests on it. */
    public Optional<String> findStepId(Derived value) {
        return Optional.ofNullable(ids.get(value));
    }

    private String visit(Derived value) {
        String known = ids.get(value);
        if (known != null) {
            return known;
        }
        return value instanceof Computed computed ? add(computed, visitInputs(computed)) : visitLeaf(value);
    }

    /** The same row of a table, or the same field of the request, is one step however often it was read. */
    private String visitLeaf(Derived value) {
        String known = leaves.get(value);
        if (known != null) {
            ids.put(value, known);
            return known;
        }
        String id = add(value, List.of());
        leaves.put(value, id);
        return id;
    }

    private String add(Derived value, List<Step.StepInput> inputs) {
        String id = newId(value.label());
        ids.put(value, id);
        steps.add(step(id, value, inputs));
        if (value instanceof Assumed assumed) {
            assumptions.putIfAbsent(assumed.path() + '\n' + assumed.label(), Assumption.of(assumed));
        }
        return id;
    }

    private List<Step.StepInput> visitInputs(Computed computed) {
        List<Step.StepInput> inputs = new ArrayList<>();
        for (Input input : computed.inputs()) {
            inputs.add(new Step.StepInput(input.symbol(), input.value().quantity(), visit(input.value())));
        }
        return inputs;
    }

    private static Step step(String id, Derived value, List<Step.StepInput> inputs) {
        return new Step(id, value.label(), formula(value), inputs, value.quantity(), value.source(), reason(value));
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

    /** Small letters and digits, a hyphen for whatever stands between them. An answer has hundreds: no patterns here. */
    private static String slug(String label) {
        StringBuilder slug = new StringBuilder(label.length());
        boolean gap = false;
        for (int i = 0; i < label.length(); i++) {
            char c = Character.toLowerCase(label.charAt(i));
            boolean kept = (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9');
            if (kept) {
                slug.append(gap && slug.length() > 0 ? "-" : "").append(c);
            }
            gap = !kept;
        }
        return slug.length() == 0 ? "step" : slug.toString();
    }

    private String newId(String label) {
        String base = slug(label);
        int count = uses.merge(base, 1, Integer::sum);
        if (count == 1) {
            return base;
        }
        String id = base + "-" + count;
        // A label may itself end in a number that an earlier count produced.
        return uses.putIfAbsent(id, 1) == null ? id : newId(label);
    }
}
