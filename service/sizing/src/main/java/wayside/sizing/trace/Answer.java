package wayside.sizing.trace;

import java.util.List;
import java.util.stream.Stream;

/**
 * What a door returns: the result and all that a reader needs to judge it.
 *
 * @param result typed by the operation
 * @param figures every traced value of the result, in reading order: the roots of the derivation
 * @param choices defaults that are not numbers; numeric defaults are found in the derivation itself
 * @param cautions most severe first
 */
public record Answer<T>(T result, List<Derived> figures, List<Assumption> choices, List<Caution> cautions) {
    public Answer {
        figures = List.copyOf(figures);
        choices = List.copyOf(choices);
        cautions = cautions.stream()
                .sorted((a, b) -> a.severity().compareTo(b.severity()))
                .toList();
    }

    public Derivation derivation() {
        return Derivation.of(figures);
    }

    /** Every default that the request left open: the choices first, then the numbers in the order of their use. */
    public static List<Assumption> assumptions(Answer<?> answer, Derivation derivation) {
        return Stream.concat(answer.choices().stream(), derivation.assumptions().stream())
                .toList();
    }

    /** The same for who does not ask for the steps. */
    public static List<Assumption> assumptions(Answer<?> answer) {
        return Stream.concat(answer.choices().stream(), Assumptions.of(answer.figures()).stream())
                .toList();
    }
}
