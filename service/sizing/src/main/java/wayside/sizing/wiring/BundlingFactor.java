package wayside.sizing.wiring;

import wayside.sizing.reference.ReferenceTable;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Unit;

/** What conductors that lie together make of an ampacity: the printed step of a table. */
final class BundlingFactor {
    private BundlingFactor() {}

    /**
     * @param table with the columns conductors_from, conductors_to, factor
     * @param count current-carrying conductors that run together, 1 or more
     * @return 0 to 1
     */
    static Derived of(ReferenceTable table, Derived count) {
        ReferenceTable.Row step = table.rows().stream()
                .filter(row -> count.value() <= row.findNumber("conductors_to").orElse(Double.POSITIVE_INFINITY))
                .findFirst()
                .orElseThrow(() -> new IllegalStateException(table.name() + " has no open last step"));
        return table.cell("bundling factor", step, "factor", Unit.COUNT);
    }
}
