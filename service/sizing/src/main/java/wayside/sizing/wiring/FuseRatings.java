package wayside.sizing.wiring;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import wayside.sizing.reference.ReferenceTable;
import wayside.sizing.reference.ReferenceTables;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.NamedOperation;
import wayside.sizing.trace.Unit;

/** Standard ratings of fuses, small to large [A]. */
final class FuseRatings {
    private static final double SMALLEST_SHARED = 10;
    private static final String BOTH = "fuses and circuit breakers";
    private static final ReferenceTable TABLE_240_6 = ReferenceTables.table("nfpa70-2023/table-240-6-a");
    private static final ReferenceTable SMALL = ReferenceTables.table("practice/small-fuse-ratings");

    /** NFPA 70-2023, 240.6(A), those standard for fuses only included. */
    static final FuseRatings STANDARD = new FuseRatings(
            TABLE_240_6.rows().stream().map(row -> rating(TABLE_240_6, row)), "of " + TABLE_240_6.name());

    /** What vehicle shops stock below 10 A (common practice), the ratings of 240.6(A) from there on. */
    static final FuseRatings VEHICLE = new FuseRatings(
            Stream.concat(
                    SMALL.rows().stream().map(row -> rating(SMALL, row)),
                    TABLE_240_6.rows().stream()
                            .filter(row -> row.text("devices").equals(BOTH))
                            .map(row -> rating(TABLE_240_6, row))
                            .filter(rating -> rating.value() >= SMALLEST_SHARED)),
            "below 10 A of " + SMALL.name() + ", from 10 A on of " + TABLE_240_6.name() + " for " + BOTH);

    private final List<Derived> ratingsA;
    private final NamedOperation next;

    private FuseRatings(Stream<Derived> ratingsA, String where) {
        this.ratingsA = ratingsA.toList();
        this.next = NamedOperation.of(
                NamedOperation.Kind.NEXT_SIZE,
                "The smallest rating that is at least I_d: " + where,
                TABLE_240_6.source());
    }

    /** The smallest rating that carries the current; empty above the largest. */
    Optional<Derived> findSmallest(String label, Derived designCurrentA) {
        for (Derived rating : ratingsA) {
            if (rating.value() >= designCurrentA.value()) {
                return Optional.of(next.value(label, rating.value(), Unit.AMPERE, designCurrentA.as("I_d")));
            }
        }
        return Optional.empty();
    }

    Derived largestA() {
        return ratingsA.get(ratingsA.size() - 1);
    }

    private static Derived rating(ReferenceTable table, ReferenceTable.Row row) {
        return table.cell("standard fuse rating of " + row.key() + " A", row, "rating_A", Unit.AMPERE);
    }
}
