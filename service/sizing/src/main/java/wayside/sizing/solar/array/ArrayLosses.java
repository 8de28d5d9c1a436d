package wayside.sizing.solar.array;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wayside.sizing.reference.ReferenceTable;
import wayside.sizing.reference.ReferenceTables;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Expression;
import wayside.sizing.trace.Input;
import wayside.sizing.trace.Source;
import wayside.sizing.trace.Unit;

/**
 * What an array's losses leave, item by item.
 *
 * <p>{@code f = product(1 - l)}, in full {@code (1 - soiling) (1 - shading) (1 - mismatch) (1 - wiring) (1 - connections) (1 - light-induced degradation)
 * (1 - nameplate rating)}.
 *
 * <p>Source: NREL/TP-6A20-62641 (2014), default losses. Differs from it: availability is left out, for it is a matter of the
 * grid; shading is the vehicle's own.
 */
public final class ArrayLosses {
    static final String TABLE = "nrel-tp-6a20-62641-2014/array-losses";
    static final Source SOURCE = ReferenceTables.table(TABLE).source();

    private static final List<String> CATEGORIES =
            List.of("soiling", "mismatch", "wiring", "connections", "light-induced degradation", "nameplate rating");

    private static final Expression LEFT = Expression.of("f = product(1 - l)", SOURCE);

    private ArrayLosses() {}

    /**
     * The share that all losses leave.
     *
     * @param shadedShare of the light, 0 to 1
     * @param snowCoveredShare of the light, 0 to 1, where it is known
     * @return f [share]
     */
    public static Derived factor(Derived shadedShare, Optional<Derived> snowCoveredShare) {
        ReferenceTable table = ReferenceTables.table(TABLE);
        List<Input> inputs = new ArrayList<>(List.of(shadedShare.as("l")));
        snowCoveredShare.ifPresent(snow -> inputs.add(snow.as("l")));
        for (String category : CATEGORIES) {
            Derived loss = Derived.lookedUp(
                    "loss: " + category,
                    table.row(category).number("loss_percent") / 100,
                    Unit.SHARE,
                    TABLE,
                    category,
                    SOURCE);
            inputs.add(loss.as("l"));
        }
        return LEFT.value("array: share left by its losses", Unit.SHARE, inputs);
    }
}
