package wayside.sizing.solar.array;

import wayside.sizing.reference.ReferenceTable;
import wayside.sizing.reference.ReferenceTables;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Expression;
import wayside.sizing.trace.Unit;

/**
 * How hot a panel's cells run above the air.
 *
 * <p>{@code Tc = Ta + G exp(a + b v) + G / 1000 dT}: G irradiance on the plane [W/m2], v wind at 10 m [m/s], dT cell above the
 * module's back at 1000 W/m2 [K].
 *
 * <p>Source: D. L. King, W. E. Boyson and J. A. Kratochvil, Photovoltaic array performance model, Sandia National
 * Laboratories SAND2004-3535, eq. 11 and 12.
 */
public final class CellTemperature {
    /** The rows of the published table. */
    public static final String TABLE = "sandia-sand2004-3535/cell-temperature";

    /** A panel glued or screwed close to a roof: no air behind it. */
    public static final String INSULATED_BACK = "insulated-back";

    private static final ReferenceTable MOUNTINGS = ReferenceTables.table(TABLE);
    private static final Expression RISE = Expression.of("r = exp(a + b v) + d / G_0", MOUNTINGS.source())
            .with("G_0", ArrayOutput.STC_IRRADIANCE_W_M2, Unit.WATT_PER_SQUARE_METRE);

    private CellTemperature() {}

    /**
     * Rise of the cells for each W/m2: {@code r = exp(a + b v) + dT / 1000}.
     *
     * @param mounting first column of the table: {@code insulated-back}, {@code close-roof}, {@code open-rack}
     * @param windMS wind at 10 m [m/s], 0 or more
     * @return [K per W/m2]
     */
    static Derived riseKPerWm2(String mounting, Derived windMS) {
        ReferenceTable.Row row = MOUNTINGS.row(mounting);
        String of = ", " + mounting.replace('-', ' ');
        return RISE.value(
                "rise of the cells above the air for each W/m2",
                Unit.KELVIN_PER_WATT_PER_SQUARE_METRE,
                MOUNTINGS
                        .cell("cell heating: coefficient a" + of, row, "a", Unit.COUNT)
                        .as("a"),
                MOUNTINGS
                        .cell("cell heating: coefficient b in s/m" + of, row, "b_s_per_m", Unit.COUNT)
                        .as("b"),
                windMS.as("v"),
                MOUNTINGS
                        .cell("cell heating: cell above its back in full sun" + of, row, "delta_k", Unit.KELVIN)
                        .as("d"));
    }

    /**
     * Temperature of the cells.
     *
     * @param ambientC air [C]
     * @param irradianceWm2 on the plane [W/m2]
     * @param riseKPerWm2 of {@link #riseKPerWm2}
     * @return [C]
     */
    public static double cellC(double ambientC, double irradianceWm2, double riseKPerWm2) {
        return ambientC + irradianceWm2 * riseKPerWm2;
    }
}
