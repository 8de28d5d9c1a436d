package wayside.sizing.wiring;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import wayside.sizing.reference.ReferenceTable;
import wayside.sizing.reference.ReferenceTables;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Unit;

/** Standard ratings of fuses, small to large [A]. */
final class FuseRatings {
    private static final double SMALLEST_SHARED = 10;
    private static final String BOTH = "fuses and circuit breakers";

    /** NFPA 70-2023, 240.6(A), those standard for fuses only included. */
    static final List<Derived> STANDARD = read("nfpa70-2023/table-240-6-a").toList();

    /** What vehicle shops stock below 10 A (common practice), the ratings of 240.6(A) from there on. */
    static final List<Derived> VEHICLE = Stream.concat(
                    read("practice/small-fuse-ratings"),
                    read("nfpa70-2023/table-240-6-a", BOTH).filter(rating -> rating.value() >= SMALLEST_SHARED))
            .toList();

    private FuseRatings() {}

    /** The smallest rating that carries the current; empty above the largest. */
    static Optional<Derived> findSmallest(List<Derived> ratingsA, double currentA) {
        return ratingsA.stream().filter(rating -> rating.value() >= currentA).findFirst();
    }

    private static Stream<Derived> read(String name) {
        ReferenceTable table = ReferenceTables.table(name);
        return table.rows().stream().map(row -> rating(table, row));
    }

    private static Stream<Derived> read(String name, String devices) {
        ReferenceTable table = ReferenceTables.table(name);
        return table.rows().stream()
                .filter(row -> row.text("devices").equals(devices))
                .map(row -> rating(table, row));
    }

    private static Derived rating(ReferenceTable table, ReferenceTable.Row row) {
        return table.cell("standard fuse rating", row, "rating_A", Unit.AMPERE);
    }
}
