package wayside.sizing.charging;

import java.util.Comparator;
import java.util.List;
import wayside.sizing.brief.PartSize;
import wayside.sizing.sizes.NextSize;
import wayside.sizing.sizes.Pieces;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Expression;
import wayside.sizing.trace.NamedOperation;
import wayside.sizing.trace.Unit;

/**
 * A charger that can be bought.
 *
 * @param neededA output that is wanted, exactly [A]
 * @param currentA rated output of all together [A]
 * @param count of equal ones
 * @param eachA rated output of one [A]
 * @param size of each
 */
public record ChargerRating(Derived neededA, Derived currentA, Derived count, Derived eachA, PartSize size) {
    private static final Expression WANTED = Expression.commonPractice("I = min(I_need, I_most)");
    private static final Expression EACH = Expression.definition("I_each = I / n");
    private static final NamedOperation NEXT = NextSize.operation(
            "the chargers for these voltages, one or as many as work side by side; but not above I_most,"
                    + " where any is below it,");

    /**
     * What gives what is needed, as far as what stands around it allows.
     *
     * @param label of the rated output
     * @param all that are made for these voltages, at least one
     */
    static <S extends PartSize> ChargerRating of(String label, Derived neededA, Derived mostA, List<Pieces<S>> all) {
        Derived wanted = WANTED.value(label + ", exactly", Unit.AMPERE, neededA.as("I_need"), mostA.as("I_most"));
        Pieces<S> pieces = NextSize.atLeast(wanted.value(), all)
                .filter(one -> NextSize.reaches(mostA.value(), one.total()))
                .or(() -> NextSize.atMost(mostA.value(), all))
                .orElseGet(() -> all.stream()
                        .min(Comparator.comparingDouble(Pieces::total))
                        .orElseThrow());
        Derived current = NEXT.value(label, pieces.total(), Unit.AMPERE, wanted.as("I"), mostA.as("I_most"));
        Derived count =
                NEXT.value(label + ", chargers", pieces.count(), Unit.COUNT, wanted.as("I"), mostA.as("I_most"));
        Derived each = EACH.value(label + ", each", Unit.AMPERE, current.as("I"), count.as("n"));
        return new ChargerRating(wanted, current, count, each, pieces.size());
    }
}
