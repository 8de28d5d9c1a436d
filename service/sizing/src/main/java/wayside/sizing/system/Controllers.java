package wayside.sizing.system;

import java.util.Arrays;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Expression;
import wayside.sizing.trace.NamedOperation;
import wayside.sizing.trace.Source;
import wayside.sizing.trace.Unit;

/**
 * The charge controllers of an array: none is made for more than 100 A, so a large array has several, each with its own
 * strings, cables and fuses.
 *
 * @param count of them
 * @param stringCount strings on the one that has most
 * @param ratedA output of each [A]
 */
public record Controllers(Derived count, Derived stringCount, Derived ratedA) {
    /** Output currents that charge controllers are commonly made for [A]. Common practice, no source. */
    private static final double[] COMMON_A = {10, 15, 20, 30, 40, 50, 60, 70, 85, 100};

    private static final double LARGEST_A = COMMON_A[COMMON_A.length - 1];
    private static final NamedOperation FEWEST = NamedOperation.of(
            NamedOperation.Kind.BEST_OF,
            "the fewest controllers that share out the p strings so that none gives more than 100 A: s n P_module / V with"
                    + " s = ceil(p / c) strings on the one that has most",
            Source.commonPractice());
    private static final Expression STRINGS = Expression.definition("s = ceil(p / c)");
    private static final Expression NEEDED = Expression.definition("I = s n P_module / V");
    private static final Expression TOGETHER = Expression.definition("I = c I_each");
    private static final NamedOperation RATING = NamedOperation.of(
            NamedOperation.Kind.NEXT_SIZE,
            "the smallest of 10, 15, 20, 30, 40, 50, 60, 70, 85 and 100 A that is at least I",
            Source.commonPractice());

    static Controllers of(ArrayStrings strings, Derived bankVoltageV) {
        Derived count = FEWEST.value(
                "charge controllers",
                fewest(strings, bankVoltageV.value()),
                Unit.COUNT,
                strings.parallelCount().as("p"),
                strings.seriesCount().as("n"),
                strings.modulePowerW().as("P_module"),
                bankVoltageV.as("V"));
        Derived each = STRINGS.value(
                "charge controller: strings",
                Unit.COUNT,
                strings.parallelCount().as("p"),
                count.as("c"));
        Derived needed = NEEDED.value(
                "charge controller: output needed",
                Unit.AMPERE,
                each.as("s"),
                strings.seriesCount().as("n"),
                strings.modulePowerW().as("P_module"),
                bankVoltageV.as("V"));
        Derived rated =
                RATING.value("charge controller: rated output", next(needed.value()), Unit.AMPERE, needed.as("I"));
        return new Controllers(count, each, rated);
    }

    /** What they give together [A]. */
    public Derived togetherA() {
        return TOGETHER.value(
                "charge controllers: rated output together", Unit.AMPERE, count.as("c"), ratedA.as("I_each"));
    }

    private static int fewest(ArrayStrings strings, double bankV) {
        int parallel = (int) strings.parallelCount().value();
        double oneA = strings.seriesCount().value() * strings.modulePowerW().value() / bankV;
        int count = 1;
        while (count < parallel && Math.ceil((double) parallel / count) * oneA > LARGEST_A) {
            count++;
        }
        return count;
    }

    private static double next(double neededA) {
        return Arrays.stream(COMMON_A)
                .filter(rating -> rating >= neededA)
                .findFirst()
                .orElse(LARGEST_A);
    }
}
