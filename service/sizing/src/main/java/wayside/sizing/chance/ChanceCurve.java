package wayside.sizing.chance;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import wayside.sizing.system.TypicalModule;

/**
 * The pairs of bank and array that run flat just rarely enough: for each array the smallest bank, found by halving. As all pairs
 * meet the same weather, a larger array never needs a larger bank.
 */
final class ChanceCurve {
    private static final double[] STEPS = {0.5, 0.75, 1, 1.25, 1.5, 2, 3};
    private static final int HALVINGS = 9;
    private static final double SMALLEST_DAYS = 0.05;
    /** Banks are told in steps of this size [Wh]. */
    static final double STEP_WH = 10;

    private final ChanceTrip trip;
    private final double accepted;

    ChanceCurve(ChanceTrip trip, double accepted) {
        this.trip = trip;
        this.accepted = accepted;
    }

    /** Pairs {bank [Wh], array [W]} by rising array; what the brief gives stays as given. */
    List<double[]> pairs(double plainArrayW) {
        OptionalDouble bank = trip.site().brief().system().nominalEnergyWh();
        List<double[]> pairs = new ArrayList<>();
        double most = largestBankWh();
        for (double arrayW : arrays(plainArrayW)) {
            double bankWh = bank.isPresent() ? bank.getAsDouble() : smallestBankWh(arrayW, most);
            if (bank.isPresent() && !sure(bankWh, arrayW)) {
                continue;
            }
            pairs.add(new double[] {bankWh, arrayW});
            most = bankWh;
            if (bank.isPresent()) {
                break;
            }
        }
        return pairs;
    }

    private List<Double> arrays(double plainArrayW) {
        OptionalDouble given = trip.site().brief().system().solarPowerW();
        if (given.isPresent()) {
            return List.of(given.getAsDouble());
        }
        if (trip.isDark()) {
            return List.of(0.0);
        }
        double base = Math.max(plainArrayW, 2 * TypicalModule.POWER_W);
        return Arrays.stream(STEPS)
                .map(step -> Math.ceil(base * step / TypicalModule.POWER_W) * TypicalModule.POWER_W)
                .distinct()
                .boxed()
                .toList();
    }

    static double largestArrayW(double plainArrayW) {
        return STEPS[STEPS.length - 1] * Math.max(plainArrayW, 2 * TypicalModule.POWER_W);
    }

    /** Carries the whole trip without any charge, in the cold and with high currents. */
    private double largestBankWh() {
        double bankWh = 4
                * trip.journey().takenWh()
                / trip.site().chemistry().usableShare().value();
        return roundUp(Math.max(bankWh, 100));
    }

    private double smallestBankWh(double arrayW, double most) {
        double high = most;
        double low = Math.min(
                high / 2,
                SMALLEST_DAYS
                        * trip.journey().highestDemand().budget().dailyTotalWh().value());
        for (int i = 0; i < HALVINGS + 4 && high - low > STEP_WH; i++) {
            double middle = Math.sqrt(low * high);
            if (sure(middle, arrayW)) {
                high = middle;
            } else {
                low = middle;
            }
        }
        return Math.min(most, roundUp(high));
    }

    private boolean sure(double bankWh, double arrayW) {
        return trip.searchedShare(trip.scenario(bankWh, arrayW)) <= accepted;
    }

    static double roundUp(double wh) {
        return Math.ceil(wh / STEP_WH - 1e-9) * STEP_WH;
    }
}
