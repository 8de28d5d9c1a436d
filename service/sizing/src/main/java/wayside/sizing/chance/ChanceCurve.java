package wayside.sizing.chance;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import wayside.sizing.chance.ChancePair.ArrayTried;
import wayside.sizing.chance.ChancePair.BankTried;
import wayside.sizing.sizes.NextSize;
import wayside.sizing.system.BankChoice;

/**
 * The pairs of bank and array that can be bought and run flat just rarely enough, beside a charger on the engine: for each array
 * the smallest bank. As all pairs meet the same weather, a larger array or charger never needs a larger bank.
 */
final class ChanceCurve {
    private static final double CLOSE_ENOUGH_WH = 10;

    private final ChanceTrip trip;
    private final ChanceDemands demands;
    private final List<BankTried> banks;
    private final List<ArrayTried> arrays;

    ChanceCurve(ChanceTrip trip, ChanceDemands demands) {
        this.trip = trip;
        this.demands = demands;
        banks = BankRungs.of(trip);
        arrays = ArraysTried.of(trip);
    }

    /** By rising array, with the charger with which the best of them costs least; what the brief gives stays as given. */
    List<ChancePair> pairs(ToDoubleFunction<ChancePair> cost) {
        List<OptionalDouble> engines = trip.enginesA();
        OptionalDouble strongest = engines.get(engines.size() - 1);
        int[] smallest = smallestBanks(strongest);
        int[] least = smallest.clone();
        OptionalDouble best = strongest;
        double bestCost = cheapest(smallest, strongest, cost);
        for (int i = engines.size() - 2; i >= 0; i--) {
            double with = cheapestBelow(bestCost, least, engines.get(i), cost);
            if (with < bestCost) {
                bestCost = with;
                best = engines.get(i);
            }
        }
        return pairs(best.equals(strongest) ? smallest : smallestBanks(best), best);
    }

    /** For each array the place of the smallest bank that is sure enough in the row of banks, whose length where none is. */
    private int[] smallestBanks(OptionalDouble engineA) {
        int[] rungs = new int[arrays.size()];
        Arrays.fill(rungs, banks.size());
        int rung = banks.size();
        for (int i = 0; i < rungs.length; i++) {
            while (rung > 0 && isSure(pair(rung - 1, i, engineA))) {
                rung--;
            }
            rungs[i] = rung;
        }
        return rungs;
    }

    private double cheapest(int[] rungs, OptionalDouble engineA, ToDoubleFunction<ChancePair> cost) {
        return pairs(rungs, engineA).stream().mapToDouble(cost).min().orElse(Double.POSITIVE_INFINITY);
    }

    /**
     * The least cost with a weaker charger; only what would cost less is tried.
     *
     * @param least by array the smallest bank that a stronger charger needs; is raised to what this one was seen to need
     */
    private double cheapestBelow(double limit, int[] least, OptionalDouble engineA, ToDoubleFunction<ChancePair> cost) {
        double best = limit;
        for (int i = 0; i < least.length; i++) {
            while (least[i] < banks.size() && cost.applyAsDouble(pair(least[i], i, engineA)) < best) {
                ChancePair pair = pair(least[i], i, engineA);
                if (isSure(pair)) {
                    best = cost.applyAsDouble(pair);
                } else {
                    least[i]++;
                }
            }
        }
        return best;
    }

    private List<ChancePair> pairs(int[] rungs, OptionalDouble engineA) {
        List<ChancePair> pairs = new ArrayList<>();
        for (int i = 0; i < rungs.length; i++) {
            if (rungs[i] < banks.size()) {
                pairs.add(pair(rungs[i], i, engineA));
            }
            if (rungs[i] == 0) {
                // Beside the smallest bank more array serves nobody.
                break;
            }
        }
        return pairs;
    }

    private ChancePair pair(int rung, int array, OptionalDouble engineA) {
        return ChancePair.of(banks.get(rung), arrays.get(array), engineA);
    }

    /** What comes closest where nothing is sure enough: the most of everything that is not given. */
    ChancePair most(double plainBankWh) {
        List<OptionalDouble> engines = trip.enginesA();
        BankTried largest = banks.isEmpty() ? BankTried.given(plainBankWh) : banks.get(banks.size() - 1);
        return ChancePair.of(largest, arrays.get(arrays.size() - 1), engines.get(engines.size() - 1));
    }

    /** The same with the next larger array; empty where the roof is full, or the array was given. */
    Optional<ChancePair> widened(ChancePair pair) {
        return arrays.stream()
                .filter(other -> other.powerW() > pair.arrayW())
                .findFirst()
                .map(pair::with);
    }

    /** The same with the next stronger charger on the engine; empty where the alternator allows none. */
    Optional<ChancePair> strengthened(ChancePair pair) {
        return trip.enginesA().stream()
                .filter(other -> other.orElse(0) > pair.engineA().orElse(0))
                .findFirst()
                .map(pair::with);
    }

    /** The first that is not below so much [Wh]; else the largest, or that one where none is made. */
    BankTried bankFrom(double nominalWh) {
        return banks.stream()
                .filter(bank -> NextSize.reaches(bank.energyWh(), nominalWh))
                .findFirst()
                .orElseGet(() -> banks.isEmpty() ? BankTried.given(nominalWh) : banks.get(banks.size() - 1));
    }

    /** The same beside the next larger bank; empty where the ladder ends. */
    Optional<ChancePair> grown(ChancePair pair) {
        return banks.stream()
                .filter(other -> other.energyWh() > pair.bankWh())
                .min(Comparator.comparingDouble(BankTried::energyWh))
                .map(pair::with);
    }

    /** The smallest bank, of any size, that is sure enough beside array and charger of a pair that is [Wh]. */
    double exactWh(ChancePair enough) {
        double high = enough.bankWh();
        double low = banks.stream()
                .mapToDouble(BankTried::energyWh)
                .filter(wh -> wh < enough.bankWh())
                .max()
                .orElse(0);
        while (high - low > CLOSE_ENOUGH_WH) {
            double middle = (low + high) / 2;
            if (trip.isBorne(trip.scenario(enough.with(BankTried.given(middle))), demands)) {
                high = middle;
            } else {
                low = middle;
            }
        }
        return Math.max(
                high, Math.min(enough.bankWh(), BankChoice.leastWh(trip.site()).value()));
    }

    private boolean isSure(ChancePair pair) {
        return trip.isSure(trip.scenario(pair), demands);
    }
}
