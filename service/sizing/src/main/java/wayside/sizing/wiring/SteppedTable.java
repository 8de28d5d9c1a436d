package wayside.sizing.wiring;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import wayside.sizing.reference.ReferenceTable;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Unit;

/** One column of a table whose rows are steps: each holds up to a bound, the last may be open. */
final class SteppedTable {
    private final List<Step> steps = new ArrayList<>();

    /** @param factor empty where the table prints none */
    private record Step(double upTo, Optional<Derived> factor) {}

    /**
     * @param label of a row's factor, by the row's key
     * @param upToColumn upper bound of each row, rising; an empty cell is open
     * @param factorColumn what holds in the row
     */
    SteppedTable(UnaryOperator<String> label, ReferenceTable table, String upToColumn, String factorColumn) {
        for (ReferenceTable.Row row : table.rows()) {
            Optional<Derived> factor = row.findNumber(factorColumn).isPresent()
                    ? Optional.of(table.cell(label.apply(row.key()), row, factorColumn, Unit.COUNT))
                    : Optional.empty();
            steps.add(new Step(row.findNumber(upToColumn).orElse(Double.POSITIVE_INFINITY), factor));
        }
    }

    /** The factor of the first row whose bound is not below the value; empty beyond the table or in an empty cell. */
    Optional<Derived> find(double value) {
        for (Step step : steps) {
            if (value <= step.upTo()) {
                return step.factor();
            }
        }
        return Optional.empty();
    }
}
