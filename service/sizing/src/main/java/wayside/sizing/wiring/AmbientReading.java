package wayside.sizing.wiring;

import wayside.sizing.reference.ReferenceTable;
import wayside.sizing.reference.ReferenceTables;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Expression;
import wayside.sizing.trace.Source;
import wayside.sizing.trace.Unit;

/** The air around a circuit's conductors: as given or 30 C, and never below 50 C in an engine space. */
final class AmbientReading {
    private static final ReferenceTable ENGINE_SPACE = ReferenceTables.table("cfr33-183/engine-space");
    private static final double TABLE_AMBIENT_C = 30;
    private static final Expression HOTTER = Expression.definition("T = max(T_given, T_engine)");

    private AmbientReading() {}

    static Derived of(CircuitTask task, boolean engineSpace) {
        return engineSpace ? inEngineSpace(task) : task.ambientC().orElseGet(() -> unknown(task));
    }

    private static Derived inEngineSpace(CircuitTask task) {
        Derived engine = ENGINE_SPACE.cell(
                "ambient in an engine space", ENGINE_SPACE.rows().get(0), "ambient_C", Unit.CELSIUS);
        return task.ambientC()
                .map(given -> HOTTER.value(
                        task.label("ambient in the engine space"),
                        Unit.CELSIUS,
                        given.as("T_given"),
                        engine.as("T_engine")))
                .orElse(engine);
    }

    private static Derived unknown(CircuitTask task) {
        return Derived.leftOpen(
                task.label("ambient around the cable"),
                TABLE_AMBIENT_C,
                Unit.CELSIUS,
                task.field("ambientC"),
                "What the ampacity tables are printed for; a closed vehicle in the sun is hotter, so say so if yours is",
                Source.commonPractice());
    }
}
