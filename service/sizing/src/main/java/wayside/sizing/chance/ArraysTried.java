package wayside.sizing.chance;

import java.util.ArrayList;
import java.util.List;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.stream.IntStream;
import wayside.sizing.chance.ChancePair.ArrayTried;
import wayside.sizing.system.ArrayLadder;
import wayside.sizing.system.StringOption;

/** The arrays that a search tries: none where something else charges, then in small steps up to a full roof. */
final class ArraysTried {
    /** A full roof is reached in so many steps, each the next array that exists. */
    private static final int STEPS = 36;

    private ArraysTried() {}

    /** By rising power; the one that the brief gives by itself. */
    static List<ArrayTried> of(ChanceTrip trip) {
        OptionalDouble given = trip.site().brief().system().solarPowerW();
        if (given.isPresent()) {
            return List.of(ArrayTried.given(given.getAsDouble()));
        }
        List<ArrayTried> onTheRoof = trip.isDark() ? List.of() : onTheRoof(ArrayLadder.of(trip.site()));
        if (onTheRoof.isEmpty()) {
            return List.of(ArrayTried.NONE);
        }
        List<ArrayTried> all = new ArrayList<>();
        if (trip.isChargedWithoutSun() && trip.leastArrayW() <= 0) {
            all.add(ArrayTried.NONE);
        }
        onTheRoof.stream().filter(array -> array.powerW() >= trip.leastArrayW()).forEach(all::add);
        return all.isEmpty() ? onTheRoof.subList(onTheRoof.size() - 1, onTheRoof.size()) : all;
    }

    private static List<ArrayTried> onTheRoof(ArrayLadder ladder) {
        TreeMap<Double, ArrayTried> byPower = new TreeMap<>();
        double largestW = ladder.largest().map(StringOption::powerW).orElse(0.0);
        IntStream.rangeClosed(1, STEPS)
                .mapToObj(step -> ladder.next(largestW * step / STEPS).or(ladder::largest))
                .flatMap(Optional::stream)
                .forEach(option -> byPower.putIfAbsent(option.powerW(), ArrayTried.of(option)));
        return withoutHeavier(byPower);
    }

    /** Without those that a larger one weighs less than. */
    private static List<ArrayTried> withoutHeavier(NavigableMap<Double, ArrayTried> byPower) {
        List<ArrayTried> kept = new ArrayList<>();
        double lightestKg = Double.POSITIVE_INFINITY;
        for (ArrayTried array : byPower.descendingMap().values()) {
            if (array.massKg() < lightestKg) {
                lightestKg = array.massKg();
                kept.add(0, array);
            }
        }
        return kept;
    }
}
