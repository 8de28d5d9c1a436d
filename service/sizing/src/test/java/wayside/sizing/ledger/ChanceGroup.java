package wayside.sizing.ledger;

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
    /** Fewer say nothing. */
    private static final int FEWEST_STATIONS = 10;

    /** All classes, the first of which is below what is told in figures. */
    static List<ChanceGroup> of(List<ChanceCell> cells) {
        return IntStream.range(0, EDGES.length - 1)
                .mapToObj(i -> group(cells.stream()
                        .filter(cell -> cell.told() >= EDGES[i] && cell.told() < EDGES[i + 1])
                        .toList()))
                .toList();
    }

    /** Those from .02 to .5, which are held to a band. */
    static List<ChanceGroup> held(List<ChanceCell> cells) {
        List<ChanceGroup> all = of(cells);
        return all.subList(FIRST_HELD, all.size()).stream()
                .filter(group -> group.stations() >= FEWEST_STATIONS)
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

    /** Within a third and two standard errors. */
    boolean cameTrue() {
        return Math.abs(came - told) <= told / 3 + 2 * error;
    }
}
