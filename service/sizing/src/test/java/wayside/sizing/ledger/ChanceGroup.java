package wayside.sizing.ledger;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * A class of told chances over all stations.
 *
 * @param stations how many had such trips
 * @param told mean predicted chance
 * @param came share of the trips that ran flat
 * @param error standard error of the difference, the stations being what is independent
 */
record ChanceGroup(int stations, double told, double came, double error) {
    private static final double[] EDGES = {0.01, 0.02, 0.05, 0.1, 0.2, 0.35, 0.5};
    private static final int FIRST_HELD = 1;
    /** Fewer say little, so that such a class is held together with its neighbour. */
    private static final int FEWEST_STATIONS = 10;

    /** All classes, the first of which is below what is told in figures. */
    static List<ChanceGroup> of(List<ChanceCell> cells) {
        return IntStream.range(0, EDGES.length - 1)
                .mapToObj(i -> group(between(cells, EDGES[i], EDGES[i + 1])))
                .toList();
    }

    /** Those from .02 to .5, which are held to a band: a class of few stations goes in with the next, the last with the one before. */
    static List<ChanceGroup> held(List<ChanceCell> cells) {
        List<ChanceGroup> held = new ArrayList<>();
        double high = EDGES[EDGES.length - 1];
        double pooledTo = high;
        int from = FIRST_HELD;
        for (int i = FIRST_HELD; i < EDGES.length - 1; i++) {
            ChanceGroup pooled = group(between(cells, EDGES[from], EDGES[i + 1]));
            if (pooled.stations() >= FEWEST_STATIONS) {
                held.add(pooled);
                pooledTo = EDGES[from];
                from = i + 1;
            }
        }
        if (from < EDGES.length - 1 && !held.isEmpty()) {
            held.set(held.size() - 1, group(between(cells, pooledTo, high)));
        }
        return held;
    }

    /** Too few stations to say much by itself. */
    boolean isOfFewStations() {
        return stations < FEWEST_STATIONS;
    }

    private static List<ChanceCell> between(List<ChanceCell> cells, double from, double to) {
        return cells.stream()
                .filter(cell -> cell.told() >= from && cell.told() < to)
                .toList();
    }

    private static ChanceGroup group(List<ChanceCell> mine) {
        double trips = mine.stream().mapToDouble(ChanceCell::trips).sum();
        double told = mine.stream().mapToDouble(c -> c.told() * c.trips()).sum() / trips;
        double came = mine.stream().mapToDouble(ChanceCell::flat).sum() / trips;
        double difference = came - told;
        List<String> stations =
                mine.stream().map(ChanceCell::station).distinct().toList();
        double squares = stations.stream()
                .mapToDouble(station -> {
                    double sum = mine.stream()
                            .filter(c -> c.station().equals(station))
                            .mapToDouble(c -> c.flat() - (c.told() + difference) * c.trips())
                            .sum();
                    return sum * sum;
                })
                .sum();
        return new ChanceGroup(stations.size(), told, came, Math.sqrt(squares) / trips);
    }

    /** The same on the side that leaves people in the dark. */
    boolean isNotTooSure() {
        return came - told <= told / 3 + 2 * error;
    }

    /** Within a third and two standard errors. */
    boolean cameTrue() {
        return Math.abs(came - told) <= told / 3 + 2 * error;
    }
}
