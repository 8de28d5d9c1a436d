package wayside.sizing.reference;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import wayside.sizing.trace.Basis;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Source;
import wayside.sizing.trace.Unit;

/**
 * A table as its publisher printed it, or as it was derived, with its provenance.
 *
 * @param name folder and file: {@code nfpa70-2023/chapter-9-table-8}
 * @param header the comment lines of the file by key: document, edition, table, subject, units, conditions, basis,
 *     standing
 * @param columns names with units
 * @param rows cells as printed; an empty cell means that the publisher gives none
 * @param source the document, edition and table, as a step of a derivation prints them
 */
public record ReferenceTable(
        String name, Map<String, String> header, List<String> columns, List<Row> rows, Source source) {
    public ReferenceTable {
        header = Map.copyOf(header);
        columns = List.copyOf(columns);
        rows = List.copyOf(rows);
    }

    /** A table whose header says where it is from. */
    static ReferenceTable of(String name, Map<String, String> header, List<String> columns, List<Row> rows) {
        String title = Optional.ofNullable(header.get("edition"))
                .map(edition -> header.get("document") + ", " + edition)
                .orElseGet(() -> require(name, header, "document"));
        Source source = new Source(basis(name, header), title, Optional.ofNullable(header.get("table")));
        return new ReferenceTable(name, header, columns, rows, source);
    }

    private static Basis basis(String name, Map<String, String> header) {
        String code = require(name, header, "basis");
        return Arrays.stream(Basis.values())
                .filter(basis -> basis.code().equals(code))
                .findFirst()
                .orElseThrow(() -> new IllegalStateException(name + ": unknown basis " + code));
    }

    /** A header entry that every table must have. */
    public String require(String key) {
        return require(name, header, key);
    }

    private static String require(String name, Map<String, String> header, String key) {
        String value = header.get(key);
        if (value == null) {
            throw new IllegalStateException(name + ": no '" + key + "' in its header");
        }
        return value;
    }

    /** The first row whose first cell is the key. */
    public Optional<Row> findRow(String key) {
        for (Row row : rows) {
            if (row.key().equals(key)) {
                return Optional.of(row);
            }
        }
        return Optional.empty();
    }

    /** The row of a key that the table must hold. */
    public Row row(String key) {
        return findRow(key).orElseThrow(() -> new IllegalStateException(name + ": no row " + key));
    }

    /** A cell of this table as a traced value. */
    public Derived cell(String label, Row row, String column, Unit unit) {
        return Derived.lookedUp(label, row.number(column), unit, name, row.key(), source());
    }

    /** One line of the table. */
    public record Row(Map<String, String> cells, String key) {
        public Row {
            cells = Map.copyOf(cells);
        }

        public String text(String column) {
            String cell = cells.get(column);
            if (cell == null) {
                throw new IllegalStateException("No column " + column + " in row " + key);
            }
            return cell;
        }

        public double number(String column) {
            return Double.parseDouble(text(column));
        }

        /** The number of a cell that may be empty. */
        public OptionalDouble findNumber(String column) {
            String cell = text(column);
            return cell.isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(Double.parseDouble(cell));
        }
    }
}
