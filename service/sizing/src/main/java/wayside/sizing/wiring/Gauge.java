package wayside.sizing.wiring;

import java.util.List;
import wayside.sizing.reference.ReferenceTable;
import wayside.sizing.reference.ReferenceTables;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Expression;
import wayside.sizing.trace.Unit;

/**
 * A size of the American wire gauge.
 *
 * @param awg as it is written: {@code 6}, {@code 1/0}
 * @param rank 0 for the thinnest of the series
 * @param roundAreaMm2 area of the solid round wire of that gauge, ASTM B258 [mm2]
 */
public record Gauge(String awg, int rank, Derived roundAreaMm2) {
    private static final ReferenceTable DIAMETERS = ReferenceTables.table("astm-b258/awg-diameter");
    private static final Expression ROUND = Expression.definition("A = pi d d / 4");
    private static final List<Gauge> SERIES =
            DIAMETERS.rows().stream().map(Gauge::read).toList();

    /** From 18 to 4/0, thin to thick. */
    public static List<Gauge> series() {
        return SERIES;
    }

    /** The gauge of that name, which the series must hold. */
    public static Gauge of(String awg) {
        return SERIES.stream()
                .filter(gauge -> gauge.awg.equals(awg))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("No gauge " + awg + " in the series 18 to 4/0"));
    }

    public boolean isAtLeast(Gauge other) {
        return rank >= other.rank;
    }

    /** As it is spoken: {@code 6 AWG}. */
    public String title() {
        return awg + " AWG";
    }

    private static Gauge read(ReferenceTable.Row row) {
        String awg = row.key();
        Derived diameter = DIAMETERS.cell(awg + " AWG: diameter", row, "diameter_mm", Unit.MILLIMETRE);
        return new Gauge(
                awg,
                DIAMETERS.rows().indexOf(row),
                ROUND.value(awg + " AWG: area of the round wire", Unit.SQUARE_MILLIMETRE, diameter.as("d")));
    }
}
