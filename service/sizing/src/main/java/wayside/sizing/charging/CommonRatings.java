package wayside.sizing.charging;

import java.util.Arrays;

/** Output currents that chargers are commonly made for [A]. Common practice, no source. */
final class CommonRatings {
    private static final double[] CHARGER_A = {5, 10, 15, 20, 25, 30, 40, 50, 60, 80, 100, 120, 150, 200};

    private CommonRatings() {}

    /** The smallest that gives at least so much; the largest if none does. */
    static double atLeastA(double neededA) {
        return Arrays.stream(CHARGER_A)
                .filter(rating -> rating >= neededA)
                .findFirst()
                .orElse(CHARGER_A[CHARGER_A.length - 1]);
    }

    /** The largest that gives at most so much; the smallest if none is so small. */
    static double atMostA(double limitA) {
        return Arrays.stream(CHARGER_A).filter(rating -> rating <= limitA).max().orElse(CHARGER_A[0]);
    }
}
