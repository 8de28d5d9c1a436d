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

    private final boolean explained;
    private final List<Placed> placed = new ArrayList<>();

    private Figures(boolean explained) {
        this.explained = explained;
    }

    /** Figures of an answer that holds the steps that led to them. */
    public static Figures explained() {
        return new Figures(true);
    }

    /** Figures of an answer without its derivation. */
    public static Figures bare() {
        return new Figures(false);
    }

    boolean areExplained() {
        return explained;
    }

    /** The number of a figure that stands at this JSON Pointer of the answer. */
    public double at(String pointer, Derived value) {
        if (explained) {
            placed.add(new Placed(pointer, value));
        }
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
