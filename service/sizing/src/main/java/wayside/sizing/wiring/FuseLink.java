package wayside.sizing.wiring;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import wayside.sizing.reference.ReferenceTable;
import wayside.sizing.reference.ReferenceTables;
import wayside.sizing.trace.Derived;
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
    private static final List<FuseLink> ALL = Stream.of(
                    "iso8820/fuse-links", "practice/fuses-above-58-v", "practice/high-interrupt-fuses")
            .map(ReferenceTables::table)
            .flatMap(table -> table.rows().stream().map(row -> read(table, row)))
            .toList();

    /** From the most common kind to the sturdiest. */
    static List<FuseLink> all() {
        return ALL;
    }

    /** Whether it is made for strings of solar modules: gPV. */
    boolean isPhotovoltaic() {
        return standard.equals("IEC 60269-6");
    }

    /** The first of the three checks that this kind fails, in words; empty when it may be used. */
    Optional<String> findRefusal(double ratingA, double highestVoltageV, double interruptA) {
        if (ratingA < fromA || ratingA > toA) {
            return Optional.of("not made for " + plain(ratingA) + " A");
        }
        if (highestVoltageV > ratedVoltageV.value()) {
            return Optional.of("rated " + plain(ratedVoltageV.value()) + " V, the circuit reaches "
                    + plain(highestVoltageV) + " V");
        }
        if (interruptA > breakingA.value()) {
            return Optional.of(
                    "breaks " + plain(breakingA.value()) + " A, a short circuit may draw " + plain(interruptA) + " A");
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

    private static String plain(double value) {
        return value == Math.rint(value)
                ? grouped(Long.toString((long) value))
                : String.format(Locale.ROOT, "%,.1f", value);
    }

    /** Thousands parted by commas. A circuit asks for many of them: no format here. */
    private static String grouped(String digits) {
        StringBuilder text = new StringBuilder(digits);
        for (int i = digits.length() - 3; i > 0; i -= 3) {
            text.insert(i, ',');
        }
        return text.toString();
    }
}
