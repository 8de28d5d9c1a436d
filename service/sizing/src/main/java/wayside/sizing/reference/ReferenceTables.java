package wayside.sizing.reference;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/** The tables of the reference folder, read once each when first asked for. */
public final class ReferenceTables {
    private static final String FOLDER = "/wayside/sizing/reference/";
    private static final Map<String, ReferenceTable> READ = new ConcurrentHashMap<>();

    private ReferenceTables() {}

    /** Names of all tables, in the order of the index. */
    public static List<String> names() {
        return lines("index.txt").stream()
                .filter(line -> !line.isBlank() && !line.startsWith("#"))
                .toList();
    }

    public static Optional<ReferenceTable> find(String name) {
        return names().contains(name) ? Optional.of(table(name)) : Optional.empty();
    }

    /** A table that the core itself relies on. */
    public static ReferenceTable table(String name) {
        return READ.computeIfAbsent(name, key -> parse(key, lines(key + ".csv")));
    }

    private static ReferenceTable parse(String name, List<String> lines) {
        Map<String, String> header = new LinkedHashMap<>();
        List<String> columns = List.of();
        List<ReferenceTable.Row> rows = new ArrayList<>();
        for (String line : lines) {
            if (line.startsWith("#")) {
                addHeader(header, line);
            } else if (columns.isEmpty()) {
                columns = cells(line);
            } else if (!line.isBlank()) {
                rows.add(row(name, columns, cells(line)));
            }
        }
        return ReferenceTable.of(name, header, columns, rows);
    }

    private static void addHeader(Map<String, String> header, String line) {
        int colon = line.indexOf(':');
        if (colon > 0) {
            header.put(
                    line.substring(1, colon).strip(), line.substring(colon + 1).strip());
        }
    }

    private static ReferenceTable.Row row(String name, List<String> columns, List<String> cells) {
        if (cells.size() != columns.size()) {
            throw new IllegalStateException(
                    name + ": row " + cells + " has " + cells.size() + " cells, the head has " + columns.size());
        }
        Map<String, String> byColumn = new LinkedHashMap<>();
        for (int i = 0; i < columns.size(); i++) {
            byColumn.put(columns.get(i), cells.get(i));
        }
        return new ReferenceTable.Row(byColumn, cells.get(0));
    }

    /** Our tables hold no comma and no quote inside a cell, so a split is all the parsing they need. */
    private static List<String> cells(String line) {
        List<String> cells = new ArrayList<>();
        for (String cell : line.split(",", -1)) {
            cells.add(cell.strip());
        }
        return cells;
    }

    private static List<String> lines(String file) {
        try (InputStream stream = ReferenceTables.class.getResourceAsStream(FOLDER + file)) {
            if (stream == null) {
                throw new IllegalStateException("No reference file " + file);
            }
            return new BufferedReader(new InputStreamReader(stream, StandardCharsets.UTF_8))
                    .lines()
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException("Cannot read reference file " + file, e);
        }
    }
}
