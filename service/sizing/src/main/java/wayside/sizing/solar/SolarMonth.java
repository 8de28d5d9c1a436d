package wayside.sizing.solar;

import java.util.List;
import wayside.sizing.brief.PanelMount;
import wayside.sizing.brief.Stay;
import wayside.sizing.solar.array.ArrayModel;
import wayside.sizing.solar.array.ArrayOutput;
import wayside.sizing.solar.array.MonthLight;
import wayside.sizing.solar.sky.MonthAt;
import wayside.sizing.solar.sky.SkyMonth;
import wayside.sizing.trace.Assumption;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Expression;
import wayside.sizing.trace.Source;
import wayside.sizing.trace.Unit;

/**
 * What an array makes of a month at a place, for each watt of rated power.
 *
 * @param sky how sunny and warm the month is; holds the horizontal irradiation and its range
 * @param array that stands in it
 * @param planeKwhM2 irradiation of the mean day on the panel's plane, before shading [kWh/m2]
 * @param cellTemperatureC mean of the cells, each hour counting by its light [C]
 * @param yieldWhPerW energy out of the charge controller on the mean day for each rated watt [Wh/W]
 */
public record SolarMonth(
        SkyMonth sky, ArrayModel array, Derived planeKwhM2, Derived cellTemperatureC, Derived yieldWhPerW) {
    private static final Expression FLAT = Expression.definition("G = H");
    private static final Expression TILTED = Expression.definition("G = H R");
    private static final Expression OF_RATED_WATT = Expression.of(
                    "y = G k max(0, 1 + gamma (T_c - T_0)) f n",
                    Source.handbook("National Renewable Energy Laboratory NREL/TP-6A20-62641, 2014", "module model"))
            .with("T_0", ArrayOutput.STC_CELL_C, Unit.CELSIUS);
    private static final Expression OF_ARRAY = Expression.definition("E = P y");

    /**
     * The month of a stay.
     *
     * @param index of the stay in its trip, from 0
     * @param panel as far as the request says; {@link PanelMount#OPEN} when it says nothing
     */
    public static SolarMonth of(Stay stay, int index, PanelMount panel) {
        return of(MonthAt.of(stay, index), ArrayModel.of(panel, stay.place().latitude()));
    }

    /** A month at a place under an array. */
    public static SolarMonth of(MonthAt at, ArrayModel array) {
        SkyMonth sky = SkyMonth.of(at);
        return of(at, sky, array, MonthChain.light(at, sky, array));
    }

    /** A month under a known sky whose hours have made something known of its light. */
    public static SolarMonth of(MonthAt at, SkyMonth sky, ArrayModel array, MonthLight light) {
        Derived plane = plane(at, sky, array, light);
        return new SolarMonth(sky, array, plane, light.cellC(), ofRatedWatt(at, array, light, plane));
    }

    public Derived horizontalKwhM2() {
        return sky.horizontalKwhM2();
    }

    /** Where the sky and the air come from, when they are ours. */
    public List<Assumption> choices() {
        return sky.choices();
    }

    /**
     * Energy of a mean day out of an array of a given power.
     *
     * @param label of the result
     * @param powerW rated power of the array [W]
     * @return [Wh]
     */
    public Derived dailyWh(String label, Derived powerW) {
        return OF_ARRAY.value(label, Unit.WATT_HOUR, powerW.as("P"), yieldWhPerW.as("y"));
    }

    private static Derived plane(MonthAt at, SkyMonth sky, ArrayModel array, MonthLight light) {
        String label = at.label() + ": irradiation on the panel, mean day";
        Unit unit = Unit.KILOWATT_HOUR_PER_SQUARE_METRE;
        Derived horizontal = sky.horizontalKwhM2();
        return array.position().plane().isHorizontal()
                ? FLAT.value(label, unit, horizontal.as("H"))
                : TILTED.value(
                        label, unit, horizontal.as("H"), light.planeRatio().as("R"));
    }

    /** Each kWh/m2 that enters is an hour at rated power. */
    private static Derived ofRatedWatt(MonthAt at, ArrayModel array, MonthLight light, Derived plane) {
        return OF_RATED_WATT.value(
                at.label() + ": yield of a rated watt, mean day",
                Unit.WATT_HOUR_PER_WATT,
                plane.as("G"),
                light.opticalShare().as("k"),
                array.powerCoefficient().as("gamma"),
                light.cellC().as("T_c"),
                array.lossFactor().as("f"),
                array.controllerEfficiency().as("n"));
    }
}
