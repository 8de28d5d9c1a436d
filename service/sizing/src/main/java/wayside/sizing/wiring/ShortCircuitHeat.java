package wayside.sizing.wiring;

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
 * The heat of a short circuit: what a fuse lets through while it opens, {@code I^2 t}, against what the conductor's insulation
 * outlasts, {@code k^2 S^2} with {@code k^2 = Q (b + 20) / rho ln((b + T_f) / (b + T_i))}. S [mm2] the area of one conductor, Q
 * the heat capacity of copper, b = 234.5 K and rho its resistance at 20 C, T_i [C] the insulation's class, the hottest at which the
 * short may find it, T_f [C] what it bears for a moment.
 *
 * <p>Valid for at most 5 s, in which no heat leaves the conductor. Source: IEC 60364-5-54, Annex A, as secondary pages print it; its
 * printed k follow from these constants within 0.7 %. Differs from the source in: the final temperature goes by the insulation's
 * class, since its material is not known.
 */
final class ShortCircuitHeat {
    private static final ReferenceTable TIMES = ReferenceTables.table("iso8820/operating-times");
    private static final Source METHOD =
            Source.standard("IEC 60364-5-54, as quoted", "Annex A: k from the material's constants");
    /** PVC of up to 105 C bears 160 C for a moment; which kinds are of which class is from memory. */
    private static final Expression PVC = outlasted(160);

    private static final Expression CROSS_LINKED = outlasted(250);
    private static final Expression SILICONE = outlasted(350);
    private static final Expression LET_THROUGH = Expression.definition("W = I^2 max(w)");
    private static final Expression OF_A_ROW = Expression.definition("w = m^2 t");

    private static final double PVC_TO_C = 105;

    private static final double CROSS_LINKED_TO_C = 150;

    private ShortCircuitHeat() {}

    /**
     * What a conductor outlasts [A2s].
     *
     * @param areaMm2 of one conductor [mm2]
     * @param insulationC its class [C]
     */
    static Derived outlastedA2s(ConductorLabels labels, Derived areaMm2, Derived insulationC) {
        double hottestC = insulationC.value();
        Expression heat = hottestC <= PVC_TO_C ? PVC : hottestC <= CROSS_LINKED_TO_C ? CROSS_LINKED : SILICONE;
        return heat.value(
                labels.of("heat of a short that it outlasts"),
                Unit.AMPERE_SQUARED_SECOND,
                areaMm2.as("S"),
                insulationC.as("T_i"));
    }

    private static Expression outlasted(double finalC) {
        return Expression.of("W = 1000000 S^2 Q (b + 20) ln((b + T_f) / (b + T_i)) / rho", METHOD)
                .with("Q", 0.00345, Unit.JOULE_PER_KELVIN_CUBIC_MILLIMETRE)
                .with("b", 234.5, Unit.KELVIN)
                .with("rho", 17.241, Unit.OHM_PER_KM)
                .with("T_f", finalC, Unit.CELSIUS);
    }

    /**
     * The most that a fuse lets through while it opens [A2s]; empty where its times are not tabulated. Above six times its rating
     * it lets through at least as much as there.
     *
     * @param label of the result
     */
    static Optional<Derived> letThroughA2s(String label, Derived ratingA, FuseLink link) {
        List<Input> rows = new ArrayList<>();
        rows(ratingA, link).forEach(row -> rows.add(ofARow(row).as("w")));
        if (rows.isEmpty()) {
            return Optional.empty();
        }
        rows.add(0, ratingA.as("I"));
        return Optional.of(LET_THROUGH.value(label, Unit.AMPERE_SQUARED_SECOND, rows));
    }

    /** The printed times of a fuse; none where its kind has none. */
    static List<ReferenceTable.Row> rows(Derived ratingA, FuseLink link) {
        List<ReferenceTable.Row> rows = new ArrayList<>();
        for (ReferenceTable.Row row : TIMES.rows()) {
            if (link.type().startsWith(row.text("kind") + " ")
                    && ratingA.value() >= row.findNumber("from_A").orElse(0)
                    && ratingA.value() <= row.number("to_A")) {
                rows.add(row);
            }
        }
        return rows;
    }

    /** Of the rating, at which a printed time holds. */
    static Derived multiple(ReferenceTable.Row row) {
        return TIMES.cell(row.key() + ", multiple of its rating", row, "multiple", Unit.COUNT);
    }

    private static Derived ofARow(ReferenceTable.Row row) {
        String label = row.key();
        return OF_A_ROW.value(
                label + ": heat by the square of the rating",
                Unit.SECOND,
                multiple(row).as("m"),
                TIMES.cell(label + ", longest time", row, "longest_s", Unit.SECOND)
                        .as("t"));
    }
}
