package wayside.sizing.trace;

import java.util.List;

/**
 * What an operation returns: the result and all that a reader needs to judge it. The steps, and the defaults among them,
 * are read off the figures that are placed in the answer.
 *
 * @param result typed by the operation
 * @param choices defaults that are not numbers
 * @param cautions most severe first
 */
public record Answer<T>(T result, List<Assumption> choices, List<Caution> cautions) {
    public Answer {
        choices = List.copyOf(choices);
        cautions = cautions.stream()
                .sorted((a, b) -> a.severity().compareTo(b.severity()))
                .toList();
    }
}
