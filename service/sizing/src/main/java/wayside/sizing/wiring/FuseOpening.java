package wayside.sizing.wiring;

import java.util.ArrayList;
import java.util.List;
import wayside.sizing.reference.ReferenceTable;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Expression;
import wayside.sizing.trace.Input;
import wayside.sizing.trace.Source;
import wayside.sizing.trace.Unit;

/**
 * The current from which a fuse surely opens within {@value #WITHIN_S} s: the least multiple of its rating whose longest time is
 * printed as no more than that. Source for blades: ISO 8820-3; of other kinds no printed times were seen, and six times the
 * rating stands for them, common practice.
 */
public final class FuseOpening {
    static final double WITHIN_S = 5;

    private static final double UNPRINTED_MULTIPLE = 6;
    private static final Expression BY_ITS_TIMES = Expression.definition("I = I_f min(m)");

    private FuseOpening() {}

    /** For the fuse of a circuit [A]. */
    public static Derived surelyA(SizedCircuit.Wired circuit) {
        List<Input> inputs = new ArrayList<>(multiples(circuit.fuse()));
        inputs.add(0, circuit.fuse().ratingA().as("I_f"));
        return BY_ITS_TIMES.value(
                circuit.duty().name() + ": current that surely opens its fuse within seconds", Unit.AMPERE, inputs);
    }

    private static List<Input> multiples(SizedFuse fuse) {
        List<Input> multiples = new ArrayList<>();
        for (ReferenceTable.Row row : ShortCircuitHeat.rows(fuse.ratingA(), fuse.link())) {
            if (row.number("longest_s") <= WITHIN_S) {
                multiples.add(ShortCircuitHeat.multiple(row).as("m"));
            }
        }
        return multiples.isEmpty() ? List.of(unprinted().as("m")) : multiples;
    }

    private static Derived unprinted() {
        return Derived.convention(
                "fuse without printed times: multiple of its rating that opens it within seconds",
                UNPRINTED_MULTIPLE,
                Unit.COUNT,
                "No times of its kind were seen in print; the blades that are slowest need as much",
                Source.commonPractice());
    }
}
