package wayside.server.answer;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import wayside.server.problem.Problem;
import wayside.server.problem.ProblemException;
import wayside.server.problem.ProblemKind;
import wayside.sizing.trace.Derivation;
import wayside.sizing.trace.Derived;

/**
 * Writes figures as plain numbers and keeps in mind where each stands: the figures that were placed are the roots of the
 * answer's derivation. A writer places them relative to where it was called, so that an answer can stand inside another.
 */
public final class Figures {
    private record Placed(String pointer, Derived value) {}

    private final Explanation explanation;
    private final String here;
    private final List<Placed> placed;

    private Figures(Explanation explanation, String here, List<Placed> placed) {
        this.explanation = explanation;
        this.here = here;
        this.placed = placed;
    }

    /** Those of an answer that is a document of its own. */
    public static Figures explained(Explanation explanation) {
        return new Figures(explanation, "", new ArrayList<>());
    }

    /** Those of an object that stands here under this name. */
    public Figures in(String name) {
        return new Figures(explanation, here + '/' + name, placed);
    }

    /** Those of an entry of the list that stands here. */
    public Figures entry(int index) {
        return new Figures(explanation, here + '/' + index, placed);
    }

    /** The number of a figure that stands here under this name. */
    public double at(String name, Derived value) {
        placed.add(new Placed(here + '/' + name, value));
        return value.value();
    }

    List<Derived> values() {
        return placed.stream().map(Placed::value).toList();
    }

    /**
     * The way to the figures that are asked for; null when none is.
     *
     * @throws ProblemException when no figure stands where one is asked for
     */
    @Nullable
    DerivationView derivation() {
        if (explanation instanceof Explanation.None) {
            return null;
        }
        List<Placed> asked =
                placed.stream().filter(one -> explanation.covers(one.pointer())).toList();
        if (asked.isEmpty() && explanation instanceof Explanation.Of one) {
            throw new ProblemException(Problem.of(
                    ProblemKind.BAD_REQUEST,
                    "No figure of this answer stands at " + one.at() + ", so none is explained."));
        }
        Derivation derivation = Derivation.of(asked.stream().map(Placed::value).toList());
        Map<String, String> steps = new LinkedHashMap<>();
        for (Placed one : asked) {
            steps.put(one.pointer(), derivation.stepId(one.value()));
        }
        return DerivationWriter.write(derivation, steps);
    }
}
