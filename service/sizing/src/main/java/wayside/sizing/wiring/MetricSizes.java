package wayside.sizing.wiring;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wayside.sizing.reference.ReferenceTable;
import wayside.sizing.reference.ReferenceTables;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Unit;

/**
 * The metric sizes of flexible conductors.
 *
 * <p>Metric ampacity tables for vehicles were not to be had in print, so a metric size is given the ampacity of the
 * next thinner gauge, which errs to the safe side.
 */
final class MetricSizes {
    private static final ReferenceTable CLASS_5 = ReferenceTables.table("iec60228/class-5");
    private static final List<ConductorSize> ALL = read();

    private MetricSizes() {}

    /** From 1 to 150 mm2, thin to thick. */
    static List<ConductorSize> all() {
        return ALL;
    }

    private static List<ConductorSize> read() {
        List<ConductorSize> sizes = new ArrayList<>();
        for (ReferenceTable.Row row : CLASS_5.rows()) {
            String title = row.key() + " mm2";
            Derived area = CLASS_5.cell(title + ": nominal area", row, "area_mm2", Unit.SQUARE_MILLIMETRE);
            Derived resistance =
                    CLASS_5.cell(title + ": largest resistance at 20 C", row, "plain_ohm_per_km", Unit.OHM_PER_KM);
            findNotThicker(area.value())
                    .ifPresent(gauge -> sizes.add(new ConductorSize.Metric(title, area, resistance, gauge)));
        }
        return List.copyOf(sizes);
    }

    private static Optional<Gauge> findNotThicker(double areaMm2) {
        return Gauge.series().stream()
                .filter(gauge -> gauge.roundAreaMm2().value() <= areaMm2)
                .reduce((thinner, thicker) -> thicker);
    }
}
