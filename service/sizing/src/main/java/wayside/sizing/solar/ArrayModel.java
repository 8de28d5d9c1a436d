package wayside.sizing.solar;

import wayside.sizing.brief.PanelMount;
import wayside.sizing.reference.ReferenceTable;
import wayside.sizing.reference.ReferenceTables;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Formula;
import wayside.sizing.trace.Source;
import wayside.sizing.trace.Unit;

/**
 * All of an array that no weather changes, traced: the monthly chain and the hourly ledger read the same figures.
 *
 * @param position of the panels
 * @param albedo share of the light that the ground throws back
 * @param riseKPerWm2 of the cells above the air for each W/m2
 * @param powerCoefficient gamma [1/K]
 * @param lossFactor what the itemised losses leave, shading among them
 * @param controllerEfficiency of a tracking charge controller
 */
public record ArrayModel(
        PanelPosition position,
        Derived albedo,
        Derived riseKPerWm2,
        Derived powerCoefficient,
        Derived lossFactor,
        Derived controllerEfficiency) {
    private static final double ALBEDO = 0.2;
    private static final double WIND_M_S = 1;
    private static final double GAMMA_PER_K = -0.004;
    private static final double TRACKER_EFFICIENCY = 0.95;

    /**
     * The array of a mount.
     *
     * @param mount as far as the request says
     */
    public static ArrayModel of(PanelMount mount, double latitude) {
        PanelPosition position = PanelPosition.of(mount, latitude);
        Derived albedo = Derived.convention("ground reflectance", ALBEDO, Unit.SHARE, "Grass and bare soil; fresh snow throws back far more. Without meaning for a flat panel", Source.commonPractice());
        Derived gamma = Derived.convention("temperature coefficient of panel power", GAMMA_PER_K, Unit.PER_KELVIN, "Silicon loses 0.3 to 0.5 % with each degree above 25 C", Source.commonPractice());
        Derived efficiency = Derived.convention("efficiency of the charge controller", TRACKER_EFFICIENCY, Unit.SHARE, "Controllers that track the panel's best point convert 93 to 98 %", Source.commonPractice());
        return new ArrayModel(
                position, albedo, rise(), gamma, ArrayLosses.factor(position.shadedShare()), efficiency);
    }

    private static Derived rise() {
        ReferenceTable table = ReferenceTables.table(CellTemperature.TABLE);
        ReferenceTable.Row row = table.row(CellTemperature.INSULATED_BACK);
        Derived a = table.cell("cell heating: coefficient a, insulated back", row, "a", Unit.COUNT);
        Derived b = table.cell("cell heating: coefficient b in s/m, insulated back", row, "b_s_per_m", Unit.COUNT);
        Derived wind = Derived.convention("wind over the panel", WIND_M_S, Unit.METRE_PER_SECOND, "A light air; the wind of driving isn't counted on", Source.commonPractice());
        return Derived.computed(
                "rise of the cells above the air for each W/m2",
                CellTemperature.of(CellTemperature.INSULATED_BACK).riseKPerWm2(WIND_M_S),
                Unit.KELVIN_PER_WATT_PER_SQUARE_METRE,
                new Formula("r = exp(a + b v), a panel close to the roof", table.source()),
                a.as("a"),
                b.as("b"),
                wind.as("v"));
    }
}
