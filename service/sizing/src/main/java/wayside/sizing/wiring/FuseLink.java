package wayside.sizing.wiring;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import wayside.sizing.reference.ReferenceTable;
import wayside.sizing.reference.ReferenceTables;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.FuseRefusal;
import wayside.sizing.trace.Message;
import wayside.sizing.trace.Parameter;
import wayside.sizing.trace.Unit;

/**
 * A kind of fuse by what it stands.
 *
 * @param type {@code blade 32 V}
 * @param standard the part that describes it
 * @param ratedVoltageV [V]
 * @param fromA smallest rating made [A]
 * @param toA largest rating made [A]
 * @param breakingA the current that it can break [A]
 */
public record FuseLink(
        String type, String standard, Derived ratedVoltageV, double fromA, double toA, Derived breakingA) {
    private static final List<FuseLink> ALL = Stream.of("iso8820/fuse-links", "practice/high-interrupt-fuses")
            .map(ReferenceTables::table)
            .flatMap(table -> table.rows().stream().map(row -> read(table, row)))
            .toList();

    /** From the most common kind to the sturdiest. */
    static List<FuseLink> all() {
        return ALL;
    }

    /** The first of the three checks that this kind fails; empty when it may be used. */
    Optional<Message> findRefusal(double ratingA, double highestVoltageV, double interruptA) {
        if (ratingA < fromA || ratingA > toA) {
            return Optional.of(Message.of(FuseRefusal.RATING, Parameter.number("rating", ratingA, Unit.AMPERE)));
        }
        if (highestVoltageV > ratedVoltageV.value()) {
            return Optional.of(Message.of(
                    FuseRefusal.VOLTAGE,
                    Parameter.number("ratedVoltage", ratedVoltageV),
                    Parameter.number("highestVoltage", highestVoltageV, Unit.VOLT)));
        }
        if (interruptA > breakingA.value()) {
            return Optional.of(Message.of(
                    FuseRefusal.BREAKING_CAPACITY,
                    Parameter.number("breaking", breakingA),
                    Parameter.number("shortCircuit", interruptA, Unit.AMPERE)));
        }
        return Optional.empty();
    }

    private static FuseLink read(ReferenceTable table, ReferenceTable.Row row) {
        String type = row.key();
        return new FuseLink(
                type,
                row.text("standard"),
                table.cell(type + ": rated voltage", row, "rated_V", Unit.VOLT),
                row.findNumber("from_A").orElse(0),
                row.number("to_A"),
                table.cell(type + ": breaking capacity", row, "breaking_A", Unit.AMPERE));
    }
}
