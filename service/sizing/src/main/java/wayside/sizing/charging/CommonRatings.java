package wayside.sizing.charging;

import java.util.Arrays;
import java.util.stream.Collectors;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.NamedOperation;
import wayside.sizing.trace.Source;
import wayside.sizing.trace.Unit;

/** Output currents that chargers are commonly made for [A]. Common practice, no source. */
final class CommonRatings {
    private static final double[] CHARGER_A = {5, 10, 15, 20, 25, 30, 40, 50, 60, 80, 100, 120, 150, 200};

    private static final NamedOperation NEXT = NamedOperation.of(
            NamedOperation.Kind.NEXT_SIZE,
            "The smallest of the common ratings that is at least I_need, or the largest of them; but not above the largest"
                    + " that is at most I_most, or the smallest of them: "
                    + Arrays.stream(CHARGER_A)
                            .mapToObj(rating -> Long.toString(Math.round(rating)))
                            .collect(Collectors.joining(", "))
                    + " A",
            Source.commonPractice());

    private CommonRatings() {}

    /** The rating that gives what is needed, as far as what stands around it allows. */
    static Derived next(String label, Derived neededA, Derived mostA) {
        double rating = Math.min(atLeastA(neededA.value()), atMostA(mostA.value()));
        return NEXT.value(label, rating, Unit.AMPERE, neededA.as("I_need"), mostA.as("I_most"));
    }

    /** The smallest that gives at least so much; the largest if none does. */
    private static double atLeastA(double neededA) {
        return Arrays.stream(CHARGER_A)
                .filter(rating -> rating >= neededA)
                .findFirst()
                .orElse(CHARGER_A[CHARGER_A.length - 1]);
    }

    /** The largest that gives at most so much; the smallest if none is so small. */
    private static double atMostA(double limitA) {
        return Arrays.stream(CHARGER_A).filter(rating -> rating <= limitA).max().orElse(CHARGER_A[0]);
    }
}
