package wayside.sizing.trace;

import java.util.Collection;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Each default and convention that a set of figures rests on, once, in the order in which a derivation meets them. */
final class Assumptions {
    private record Key(Optional<String> field, String label) {}

    private final Map<Key, Assumption> found = new LinkedHashMap<>();

    Assumptions() {}

    /** The way through the figures without a word about the steps. */
    static List<Assumption> of(Collection<? extends Derived> figures) {
        Assumptions assumptions = new Assumptions();
        Set<Derived> seen = Collections.newSetFromMap(new IdentityHashMap<>());
        figures.forEach(figure -> assumptions.visit(figure, seen));
        return assumptions.all();
    }

    List<Assumption> all() {
        return List.copyOf(found.values());
    }

    /** Keeps a value that was not given, and no other. */
    void add(Derived value) {
        if (value instanceof Default open) {
            found.computeIfAbsent(new Key(Optional.of(open.field()), open.label()), key -> Assumption.of(open));
        } else if (value instanceof Convention fixed) {
            found.computeIfAbsent(new Key(Optional.empty(), fixed.label()), key -> Assumption.of(fixed));
        }
    }

    private void visit(Derived value, Set<Derived> seen) {
        if (!(value instanceof Computed computed)) {
            add(value);
        } else if (seen.add(computed)) {
            for (Input input : computed.inputs()) {
                visit(input.value(), seen);
            }
        }
    }
}
