package wayside.sizing.storage;

import wayside.sizing.brief.Chemistry;
import wayside.sizing.reference.ReferenceTable;
import wayside.sizing.reference.ReferenceTables;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Expression;
import wayside.sizing.trace.Source;
import wayside.sizing.trace.Unit;

/**
 * Air that carries the hydrogen of a lead-acid bank away: {@code Q = 0.05 n I_gas C / 1000} with n [1] the cells in
 * series, I_gas [mA/Ah] the current that makes gas, C [Ah] the rated capacity, Q [m3/h]; free openings
 * {@code A = 28 Q} [cm2] each for inlet and outlet.
 *
 * <p>Source: EN IEC 62485-2 (formerly EN 50272-2) for the form, read in secondary pages. The gassing currents are those
 * of the traction standard, for a bank is charged every day. Ventilation by a licensed installer's own reading of the
 * standard wins.
 */
public final class Ventilation {
    private static final Source STANDARD =
            Source.standard("EN IEC 62485-2, as quoted in secondary pages", "ventilation air flow");

    private static final Expression AIR_FLOW = Expression.of("Q = 0.05 n I_gas C / 1000", STANDARD);
    private static final Expression OPENING = Expression.of("A = 28 Q", STANDARD);

    private Ventilation() {}

    /**
     * Free area of each of two openings [cm2].
     *
     * @param data of a lead-acid chemistry
     */
    public static Derived openingCm2(ChemistryData data, Derived cells, Derived capacityAh) {
        Derived airflow = AIR_FLOW.value(
                "ventilation: air flow",
                Unit.CUBIC_METRE_PER_HOUR,
                cells.as("n"),
                gassing(data.chemistry()).as("I_gas"),
                capacityAh.as("C"));
        return OPENING.value("ventilation: free area of each opening", Unit.SQUARE_CENTIMETRE, airflow.as("Q"));
    }

    private static Derived gassing(Chemistry chemistry) {
        ReferenceTable table = ReferenceTables.table("practice/lead-acid-gassing");
        ReferenceTable.Row row = table.row(chemistry == Chemistry.FLOODED ? "vented" : "valve-regulated");
        return table.cell("gassing current in mA per Ah", row, "gassingMilliamperePerAh", Unit.COUNT);
    }
}
