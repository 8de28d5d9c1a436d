package wayside.sizing.ledger;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import wayside.sizing.brief.Place;

/**
 * A month of a typical year, day by day: NREL TMY3, 60 stations of the United States.
 *
 * @param clearness mean of the month
 * @param days clearness of each day
 */
record RealMonth(String station, Place place, int month, double clearness, List<Double> days) {
    private static final String FILE = "/wayside/sizing/ledger/daily-clearness-tmy3.csv";

    static List<RealMonth> all() {
        try (InputStream stream = Objects.requireNonNull(RealMonth.class.getResourceAsStream(FILE))) {
            return new BufferedReader(new InputStreamReader(stream, StandardCharsets.UTF_8))
                    .lines()
                    .filter(line -> !line.startsWith("#") && !line.startsWith("station,"))
                    .map(RealMonth::parse)
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static RealMonth parse(String line) {
        List<String> cells = List.of(line.split(",", -1));
        List<Double> days = new ArrayList<>();
        for (String cell : cells.subList(6, cells.size())) {
            if (!cell.isEmpty()) {
                days.add(Double.valueOf(cell));
            }
        }
        return new RealMonth(
                cells.get(0),
                Place.of(number(cells, 1), number(cells, 2)),
                (int) number(cells, 4),
                number(cells, 5),
                days);
    }

    private static double number(List<String> cells, int column) {
        return Double.parseDouble(cells.get(column));
    }
}
