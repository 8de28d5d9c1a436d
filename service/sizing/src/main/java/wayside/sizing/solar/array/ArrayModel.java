package wayside.sizing.solar.array;

import wayside.sizing.brief.PanelMount;
import wayside.sizing.trace.Derived;
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
    private static final Derived ALBEDO = Derived.convention(
            "ground reflectance",
            0.2,
            Unit.SHARE,
            "Grass and bare soil; fresh snow throws back far more; without meaning for a flat panel",
            Source.commonPractice());
    private static final Derived GAMMA_PER_K = Derived.convention(
            "temperature coefficient of panel power",
            -0.004,
            Unit.PER_KELVIN,
            "Silicon loses 0.3 to 0.5 % with each degree above 25 C",
            Source.commonPractice());
    private static final Derived TRACKER_EFFICIENCY = Derived.convention(
            "efficiency of the charge controller",
            0.95,
            Unit.SHARE,
            "Controllers that track the panel's best point convert 93 to 98 %",
            Source.commonPractice());
    private static final Derived RISE = CellTemperature.riseKPerWm2(
            CellTemperature.INSULATED_BACK,
            Derived.convention(
                    "wind over the panel",
                    1,
                    Unit.METRE_PER_SECOND,
                    "A light air; the wind of driving isn't counted on",
                    Source.commonPractice()));

    /**
     * The array of a mount.
     *
     * @param mount as far as the request says
     */
    public static ArrayModel of(PanelMount mount, double latitude) {
        PanelPosition position = PanelPosition.of(mount, latitude);
        return new ArrayModel(
                position,
                ALBEDO,
                RISE,
                GAMMA_PER_K,
                ArrayLosses.factor(position.shadedShare(), position.snowCoveredShare()),
                TRACKER_EFFICIENCY);
    }
}
