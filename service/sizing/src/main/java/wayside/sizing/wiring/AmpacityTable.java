package wayside.sizing.wiring;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;
import java.util.stream.Collectors;
import wayside.sizing.reference.ReferenceTable;
import wayside.sizing.reference.ReferenceTables;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.NamedOperation;
import wayside.sizing.trace.Source;
import wayside.sizing.trace.Unit;

/** Printed ampacities by gauge and insulation class, gathered from the columns of one or more tables. */
final class AmpacityTable {
    private final NavigableMap<Integer, Map<String, Derived>> byClass = new TreeMap<>();
    private final NamedOperation nextLower;

    /** A printed column: its insulation class, the table it stands in, and its name there. */
    record Column(int insulationC, String table, String name) {}

    AmpacityTable(Column... columns) {
        Arrays.stream(columns).forEach(column -> byClass.put(column.insulationC(), read(column)));
        nextLower = NamedOperation.of(
                NamedOperation.Kind.NEXT_SIZE,
                "The highest class that is not above T: "
                        + byClass.keySet().stream().map(String::valueOf).collect(Collectors.joining(", ")) + " C",
                Source.definition());
    }

    /**
     * The class whose figures hold for an insulation: its own, or the next lower one of the table [C].
     *
     * @param label of the result
     * @param insulationC [C]
     * @throws IllegalArgumentException below the lowest class
     */
    Derived classOf(String label, Derived insulationC) {
        Integer found = byClass.floorKey((int) Math.floor(insulationC.value()));
        if (found == null) {
            throw new IllegalArgumentException("No ampacity for insulation of " + insulationC.value()
                    + " C; the lowest class is " + lowestClass());
        }
        return nextLower.value(label, found, Unit.CELSIUS, insulationC.as("T"));
    }

    int lowestClass() {
        return byClass.firstKey();
    }

    /** The printed figures of a class by gauge [A]; where the table has none, none. */
    Map<String, Derived> column(Derived insulationClassC) {
        return byClass.getOrDefault((int) insulationClassC.value(), Map.of());
    }

    private static Map<String, Derived> read(Column column) {
        ReferenceTable table = ReferenceTables.table(column.table());
        Map<String, Derived> cells = new HashMap<>();
        for (ReferenceTable.Row row : table.rows()) {
            if (row.findNumber(column.name()).isPresent()) {
                String label = row.key() + " AWG at " + column.insulationC() + " C: ampacity of " + column.table();
                cells.put(row.key(), table.cell(label, row, column.name(), Unit.AMPERE));
            }
        }
        return cells;
    }
}
