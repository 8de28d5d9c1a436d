package wayside.sizing.solar.epw;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;
import java.util.zip.GZIPInputStream;
import wayside.sizing.brief.Place;
import wayside.sizing.trace.Unit;

/** Real hours of typical years: NREL TMY3 (2008), 29 stations of the United States, light on the horizontal and air. */
public final class HourlyStations {
    private static final String FILE = "/wayside/sizing/ledger/hourly-tmy3.csv.gz";
    private static final int LINES_A_YEAR = 2 * 365;

    private HourlyStations() {}

    /**
     * A station's year.
     *
     * @param year its hours, the diffuse part by Erbs
     */
    public record Station(String name, TypicalYear year) {}

    /** All of them, in the order of the file. */
    public static List<Station> all() {
        try (InputStream stream = Objects.requireNonNull(HourlyStations.class.getResourceAsStream(FILE));
                BufferedReader reader = new BufferedReader(
                        new InputStreamReader(new GZIPInputStream(stream), StandardCharsets.UTF_8))) {
            List<String> lines = reader.lines()
                    .filter(line -> !line.startsWith("#") && !line.startsWith("station,"))
                    .toList();
            List<Station> stations = new ArrayList<>();
            for (int from = 0; from < lines.size(); from += LINES_A_YEAR) {
                stations.add(station(lines.subList(from, from + LINES_A_YEAR)));
            }
            return stations;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Station station(List<String> lines) {
        double[] globalWm2 = new double[EpwReader.HOURS];
        double[] airC = new double[EpwReader.HOURS];
        for (int i = 0; i < LINES_A_YEAR; i++) {
            List<String> cells = List.of(lines.get(i).split(",", -1));
            double[] into = cells.get(7).equals("t_c") ? airC : globalWm2;
            for (int hour = 0; hour < Unit.HOURS_PER_DAY; hour++) {
                into[i / 2 * Unit.HOURS_PER_DAY + hour] = number(cells, 8 + hour);
            }
        }
        List<String> first = List.of(lines.get(0).split(",", -1));
        double[] unknown = new double[EpwReader.HOURS];
        Arrays.fill(unknown, Double.NaN);
        Place place = new Place(number(first, 1), number(first, 2), OptionalDouble.of(number(first, 3)));
        return new Station(first.get(0), new TypicalYear(place, number(first, 4), globalWm2, unknown, airC));
    }

    private static double number(List<String> cells, int column) {
        return Double.parseDouble(cells.get(column));
    }
}
