package wayside.sizing.laws;

import java.util.Comparator;
import java.util.Optional;
import java.util.OptionalDouble;
import wayside.sizing.reference.ReferenceTable;
import wayside.sizing.reference.ReferenceTables;
import wayside.sizing.system.graph.Cable;
import wayside.sizing.system.graph.NodeKind;
import wayside.sizing.system.graph.SystemGraph;
import wayside.sizing.trace.Caution;
import wayside.sizing.trace.CautionCode;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Expression;
import wayside.sizing.trace.LawCode;
import wayside.sizing.trace.Parameter;
import wayside.sizing.trace.Severity;
import wayside.sizing.trace.Unit;
import wayside.sizing.wiring.SizedCircuit;

/**
 * Cables against the terminals of the chargers and converters that they end at. A thicker cable is no fault: it ends in a stud or a
 * ferrule beside the part, and the last hand's breadth is thinner. Common practice, no source.
 */
final class TerminalLaw {
    private static final ReferenceTable TERMINALS = ReferenceTables.table("practice/terminals");
    private static final Expression TOGETHER = Expression.definition("S = p S_1");

    private TerminalLaw() {}

    /** Of the cable that is nearest to its limit, or furthest beyond it. */
    static Optional<Law> find(SystemGraph graph) {
        return graph.cables().stream()
                .filter(cable -> hasTerminals(cable.from()) || hasTerminals(cable.to()))
                .filter(cable -> cable.circuit() instanceof SizedCircuit.Wired)
                .map(TerminalLaw::law)
                .min(Comparator.comparingDouble(law -> law.margin().value()));
    }

    private static boolean hasTerminals(NodeKind kind) {
        return kind == NodeKind.CHARGE_CONTROLLER
                || kind == NodeKind.ALTERNATOR_CHARGER
                || kind == NodeKind.SHORE_CHARGER
                || kind == NodeKind.CONVERTER;
    }

    private static Law law(Cable cable) {
        SizedCircuit.Wired wired = (SizedCircuit.Wired) cable.circuit();
        Derived asked = TOGETHER.value(
                wired.duty().name() + ": copper at its terminal",
                Unit.SQUARE_MILLIMETRE,
                wired.conductor().parallelCount().as("p"),
                wired.conductor().areaMm2().as("S_1"));
        ReferenceTable.Row row = row(wired.duty().currentA().value());
        Derived allowed = TERMINALS.cell("terminal of a part " + row.key(), row, "area_mm2", Unit.SQUARE_MILLIMETRE);
        Law law = Law.of(LawCode.TERMINALS_TAKE_THE_CABLE, asked, allowed);
        return asked.value() <= allowed.value()
                ? law
                : law.with(Caution.commonPractice(
                        Severity.NOTE,
                        CautionCode.THICKER_THAN_ITS_TERMINAL,
                        Parameter.text("circuit", wired.duty().name()),
                        Parameter.number("area", asked),
                        Parameter.number("terminal", allowed)));
    }

    private static ReferenceTable.Row row(double amperes) {
        return TERMINALS.rows().stream()
                .filter(row -> {
                    OptionalDouble to = row.findNumber("to_A");
                    return to.isEmpty() || amperes <= to.getAsDouble();
                })
                .findFirst()
                .orElseThrow();
    }
}
