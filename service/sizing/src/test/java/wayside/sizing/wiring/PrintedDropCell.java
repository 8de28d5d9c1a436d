package wayside.sizing.wiring;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;

/** One printed cell of a conductor table by voltage drop; the file's head says where each table was printed. */
record PrintedDropCell(
        String table,
        double volts,
        double limitPercent,
        double roundTripFt,
        double currentA,
        String printedAwg,
        String agreement) {
    private static final String FILE = "printed-voltage-drop.csv";

    static List<PrintedDropCell> all() {
        try (BufferedReader reader = new BufferedReader(new InputStreamReader(
                Objects.requireNonNull(PrintedDropCell.class.getResourceAsStream(FILE)), StandardCharsets.UTF_8))) {
            return reader.lines()
                    .filter(line -> !line.startsWith("#") && !line.startsWith("table,"))
                    .map(PrintedDropCell::parse)
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    double allowedV() {
        return volts * limitPercent / 100;
    }

    double roundTripM() {
        return roundTripFt * 0.3048;
    }

    private static PrintedDropCell parse(String line) {
        String[] cells = line.split(",", -1);
        return new PrintedDropCell(
                cells[0],
                Double.parseDouble(cells[1]),
                Double.parseDouble(cells[2]),
                Double.parseDouble(cells[3]),
                Double.parseDouble(cells[4]),
                cells[5],
                cells[6]);
    }
}
