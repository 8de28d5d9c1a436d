package wayside.sizing.solar;

import wayside.sizing.reference.ReferenceTable;
import wayside.sizing.reference.ReferenceTables;

/**
 * How hot a panel's cells run above the air.
 *
 * <p>{@code Tc = Ta + G exp(a + b v) + G / 1000 dT}: G irradiance on the plane [W/m2], v wind at 10 m [m/s], dT cell above the
 * module's back at 1000 W/m2 [K].
 *
 * <p>Source: D. L. King, W. E. Boyson and J. A. Kratochvil, Photovoltaic array performance model, Sandia National
 * Laboratories SAND2004-3535, eq. 11 and 12.
 *
 * @param a dimensionless
 * @param b [s/m]
 * @param conditionDeltaK dT [K]
 */
public record CellTemperature(double a, double b, double conditionDeltaK) {
    /** The rows of the published table. */
    static final String TABLE = "sandia-sand2004-3535/cell-temperature";

    /** A panel glued or screwed close to a roof: no air behind it. */
    public static final String INSULATED_BACK = "insulated-back";

    /**
     * Coefficients of a way of mounting.
     *
     * @param mounting first column of the table: {@code insulated-back}, {@code close-roof}, {@code open-rack}
     */
    public static CellTemperature of(String mounting) {
        ReferenceTable.Row row = ReferenceTables.table(TABLE).row(mounting);
        return new CellTemperature(row.number("a"), row.number("b_s_per_m"), row.number("delta_k"));
    }

    /**
     * Rise of the cells for each W/m2.
     *
     * @param windMS wind at 10 m [m/s], 0 or more
     * @return [K per W/m2]
     */
    public double riseKPerWm2(double windMS) {
        return Math.exp(a + b * windMS) + conditionDeltaK / 1000;
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
