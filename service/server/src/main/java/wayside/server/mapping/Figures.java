package wayside.server.mapping;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import wayside.sizing.trace.Derivation;
import wayside.sizing.trace.Derived;

/** Writes figures as plain numbers and keeps in mind where each stands, for the answer's {@code steps}. */
public final class Figures {
    private record Placed(String pointer, Derived value) {}

    private final List<Placed> placed = new ArrayList<>();

    /** The number of a figure that stands at this JSON Pointer of the answer. */
    public double at(String pointer, Derived value) {
        placed.add(new Placed(pointer, value));
        return value.value();
    }

    /** By pointer, the step that yields the figure; figures that the derivation does not hold are left out. */
    Map<String, String> steps(Derivation derivation) {
        Map<String, String> steps = new LinkedHashMap<>();
        for (Placed one : placed) {
            Optional<String> id = derivation.findStepId(one.value());
            id.ifPresent(step -> steps.put(one.pointer(), step));
        }
        return steps;
    }
}
