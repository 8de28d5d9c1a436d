package wayside.sizing.chance;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.stream.IntStream;
import wayside.sizing.system.ArrayLadder;
import wayside.sizing.system.BankChoice;
import wayside.sizing.system.BatteryPack;

/**
 * The pairs of bank and array that can be bought and run flat just rarely enough: for each array the smallest bank. As all
 * pairs meet the same weather, a larger array never needs a larger bank, and the search only goes down.
 */
final class ChanceCurve {
    /** Arrays are tried up to so many times that of the worst month, in so many steps, each as the next that exists. */
    private static final int MOST_TIMES = 3;

    private static final int STEPS = 36;

    private static final double LEAST_ARRAY_W = 200;
    private static final double CLOSE_ENOUGH_WH = 10;

    private final ChanceTrip trip;
    private final double accepted;
    private final List<BatteryPack> banks;

    ChanceCurve(ChanceTrip trip, double accepted) {
        this.trip = trip;
        this.accepted = accepted;
        banks = BankRungs.of(trip.site());
    }

    /** By rising array; what the brief gives stays as given. */
    List<ChancePair> pairs(double plainArrayW) {
        OptionalDouble given = trip.site().brief().system().nominalEnergyWh();
        List<ChancePair.ArrayTried> arrays = arrays(plainArrayW);
        return given.isPresent() ? withBank(given.getAsDouble(), arrays) : withRungs(arrays);
    }

    /** The first array that is enough for a bank. */
    private List<ChancePair> withBank(double bankWh, List<ChancePair.ArrayTried> arrays) {
        return arrays.stream()
                .filter(array -> sure(bankWh, array.powerW()))
                .limit(1)
                .map(array -> ChancePair.given(bankWh, array))
                .toList();
    }

    private List<ChancePair> withRungs(List<ChancePair.ArrayTried> arrays) {
        List<ChancePair> pairs = new ArrayList<>();
        int rung = banks.size();
        for (ChancePair.ArrayTried array : arrays) {
            while (rung > 0 && sure(banks.get(rung - 1).energyWh(), array.powerW())) {
                rung--;
            }
            if (rung < banks.size()) {
                pairs.add(ChancePair.of(banks.get(rung), array));
            }
            if (rung == 0) {
                // Beside the smallest bank more array serves nobody.
                break;
            }
        }
        return pairs;
    }

    /** The arrays to try, by rising power; none first where the trip is plugged in, so that a shop would fit none. */
    private List<ChancePair.ArrayTried> arrays(double plainArrayW) {
        OptionalDouble given = trip.site().brief().system().solarPowerW();
        if (given.isPresent()) {
            return List.of(new ChancePair.ArrayTried(given.getAsDouble(), Optional.empty()));
        }
        if (trip.isDark()) {
            return List.of(none());
        }
        ArrayLadder ladder = ArrayLadder.of(trip.site());
        double base = Math.max(plainArrayW, LEAST_ARRAY_W);
        Map<Double, ChancePair.ArrayTried> byPower = new TreeMap<>();
        if (trip.journey().highestDemandHookedUp().isPresent()) {
            byPower.put(0.0, none());
        }
        IntStream.rangeClosed(1, STEPS)
                .mapToObj(step -> ladder.next(base * MOST_TIMES * step / STEPS).or(ladder::largest))
                .flatMap(Optional::stream)
                .forEach(option -> byPower.putIfAbsent(option.powerW(), ChancePair.ArrayTried.of(option)));
        return byPower.isEmpty() ? List.of(none()) : List.copyOf(byPower.values());
    }

    private static ChancePair.ArrayTried none() {
        return new ChancePair.ArrayTried(0, Optional.empty());
    }

    /** What comes closest where nothing is sure enough: the most of everything that is not given. */
    ChancePair most(double plainArrayW, double plainBankWh) {
        List<ChancePair.ArrayTried> arrays = arrays(plainArrayW);
        ChancePair.ArrayTried array = arrays.get(arrays.size() - 1);
        OptionalDouble given = trip.site().brief().system().nominalEnergyWh();
        return given.isPresent() || banks.isEmpty()
                ? ChancePair.given(given.orElse(plainBankWh), array)
                : ChancePair.of(banks.get(banks.size() - 1), array);
    }

    /** The next larger bank; empty where the ladder ends. */
    Optional<BatteryPack> above(BatteryPack pack) {
        return banks.stream()
                .filter(other -> other.energyWh() > pack.energyWh())
                .min(Comparator.comparingDouble(BatteryPack::energyWh));
    }

    /** The smallest bank, of any size, that is sure enough beside an array, when one is [Wh]. */
    double exactWh(double arrayW, double enoughWh) {
        double high = enoughWh;
        double low = banks.stream()
                .mapToDouble(BatteryPack::energyWh)
                .filter(wh -> wh < enoughWh)
                .max()
                .orElse(0);
        while (high - low > CLOSE_ENOUGH_WH) {
            double middle = (low + high) / 2;
            if (trip.share(trip.scenario(middle, arrayW)) <= accepted) {
                high = middle;
            } else {
                low = middle;
            }
        }
        return Math.max(high, Math.min(enoughWh, BankChoice.leastWh(trip.site()).value()));
    }

    private boolean sure(double bankWh, double arrayW) {
        return trip.searchedShare(trip.scenario(bankWh, arrayW)) <= accepted;
    }
}
