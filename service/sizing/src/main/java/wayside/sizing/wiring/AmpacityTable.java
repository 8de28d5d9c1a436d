package wayside.sizing.wiring;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;
import wayside.sizing.reference.ReferenceTable;
import wayside.sizing.reference.ReferenceTables;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Unit;

/** Printed ampacities by gauge and insulation class, gathered from the columns of one or more tables. */
final class AmpacityTable {
    private final NavigableMap<Integer, Map<String, Derived>> byClass = new TreeMap<>();

    /** A printed column: its insulation class, the table it stands in, and its name there. */
    record Column(int insulationC, String table, String name) {}

    AmpacityTable(Column... columns) {
        Arrays.stream(columns).forEach(column -> byClass.put(column.insulationC(), read(column)));
    }

    /**
     * The class whose figures hold for an insulation: its own, or the next lower one of the table [C].
     *
     * @throws IllegalArgumentException below the lowest class
     */
    int classOf(double insulationC) {
        return Optional.ofNullable(byClass.floorKey((int) Math.floor(insulationC)))
                .orElseThrow(() -> new IllegalArgumentException(
                        "No ampacity for insulation of " + insulationC + " C; the lowest class is " + lowestClass()));
    }

    int lowestClass() {
        return byClass.firstKey();
    }

    /** The printed figure [A]; empty where the table has none. */
    Optional<Derived> find(Gauge gauge, int insulationClassC) {
        return Optional.ofNullable(
                byClass.getOrDefault(insulationClassC, Map.of()).get(gauge.awg()));
    }

    private static Map<String, Derived> read(Column column) {
        ReferenceTable table = ReferenceTables.table(column.table());
        Map<String, Derived> cells = new HashMap<>();
        for (ReferenceTable.Row row : table.rows()) {
            if (row.findNumber(column.name()).isPresent()) {
                String label = row.key() + " AWG at " + column.insulationC() + " C: printed ampacity";
                cells.put(row.key(), table.cell(label, row, column.name(), Unit.AMPERE));
            }
        }
        return cells;
    }
}
