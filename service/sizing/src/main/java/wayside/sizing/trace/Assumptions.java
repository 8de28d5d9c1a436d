package wayside.sizing.trace;

import java.util.Collection;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Each default that a set of results rests on, once, in the order in which a derivation meets them. */
final class Assumptions {
    private final Map<String, Assumption> found = new LinkedHashMap<>();

    Assumptions() {}

    /** The defaults alone: the way through the results without a word about the steps. */
    static List<Assumption> of(Collection<? extends Derived> results) {
        Assumptions assumptions = new Assumptions();
        Set<Derived> seen = Collections.newSetFromMap(new IdentityHashMap<>());
        results.forEach(result -> assumptions.visit(result, seen));
        return assumptions.all();
    }

    List<Assumption> all() {
        return List.copyOf(found.values());
    }

    void add(Assumed assumed) {
        found.computeIfAbsent(assumed.path() + '\n' + assumed.label(), key -> Assumption.of(assumed));
    }

    private void visit(Derived value, Set<Derived> seen) {
        if (value instanceof Assumed assumed) {
            add(assumed);
        } else if (value instanceof Computed computed && seen.add(computed)) {
            for (Input input : computed.inputs()) {
                visit(input.value(), seen);
            }
        }
    }
}
