package wayside.sizing.solar;

import java.util.List;
import wayside.sizing.brief.PanelMount;
import wayside.sizing.brief.Stay;
import wayside.sizing.trace.Assumption;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Formula;
import wayside.sizing.trace.Input;
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
    private static final Source OPTICS = Source.paper(
            "De Soto, Klein & Beckman, Solar Energy 80 (2006)",
            "Fresnel and Bouguer; sky and ground by Brandemuehl & Beckman 1980");
    private static final Source CELLS = Source.paper("Sandia National Laboratories SAND2004-3535", "eq. 11 and 12");
    private static final Source POWER =
            Source.handbook("National Renewable Energy Laboratory NREL/TP-6A20-62641, 2014", "module model");

    /**
     * The month of a stay.
     *
     * @param index of the stay in its trip, from 0
     * @param panel as far as the request says; {@link PanelMount#OPEN} when it says nothing
     */
    public static SolarMonth of(Stay stay, int index, PanelMount panel) {
        return of(
                MonthAt.of(stay, index),
                ArrayModel.of(panel, stay.place().latitude()));
    }

    /** A month at a place under an array. */
    public static SolarMonth of(MonthAt at, ArrayModel array) {
        SkyMonth sky = SkyMonth.of(at);
        return of(
                at,
                sky,
                array,
                MonthChain.light(at, sky, array, array.position().plane()));
    }

    /** A month under a known sky whose hours have made something known of its light. */
    public static SolarMonth of(MonthAt at, SkyMonth sky, ArrayModel array, MonthLight light) {
        Derived plane = plane(at, sky, array, light);
        Derived cell = cell(at, sky, array, light, plane);
        return new SolarMonth(sky, array, plane, cell, ofRatedWatt(at, array, light, plane, cell));
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
        return Derived.computed(
                label,
                powerW.value() * yieldWhPerW.value(),
                Unit.WATT_HOUR,
                Formula.definition("E = P y"),
                powerW.as("P"),
                yieldWhPerW.as("y"));
    }

    private static Derived plane(MonthAt at, SkyMonth sky, ArrayModel array, MonthLight light) {
        PanelPosition position = array.position();
        if (position.plane().isHorizontal()) {
            return Derived.computed(
                    at.label() + ": irradiation on the panel, mean day",
                    sky.horizontalKwhM2().value(),
                    Unit.KILOWATT_HOUR_PER_SQUARE_METRE,
                    Formula.definition("G = H, the panel lies flat"),
                    sky.horizontalKwhM2().as("H"),
                    position.tilt().as("b"));
        }
        return Derived.computed(
                at.label() + ": irradiation on the panel, mean day",
                sky.horizontalKwhM2().value() * light.planeRatio(),
                Unit.KILOWATT_HOUR_PER_SQUARE_METRE,
                light.onPlane(),
                planeInputs(sky, array));
    }

    private static Input[] planeInputs(SkyMonth sky, ArrayModel array) {
        return new Input[] {
            sky.horizontalKwhM2().as("H"),
            sky.clearness().as("KT"),
            sky.clearnessSpread().as("s"),
            array.position().tilt().as("b"),
            array.position().azimuth().as("A"),
            array.albedo().as("rho")
        };
    }

    private static Derived cell(MonthAt at, SkyMonth sky, ArrayModel array, MonthLight light, Derived plane) {
        return Derived.computed(
                at.label() + ": cell temperature in the sun",
                light.cellC(),
                Unit.CELSIUS,
                new Formula("Tc = Ta + r G of each hour, weighted by the hour's light; Ta swings by D about Tm", CELLS),
                sky.meanC().as("Tm"),
                sky.dailySwingK().as("D"),
                array.riseKPerWm2().as("r"),
                plane.as("G"));
    }

    private static Derived ofRatedWatt(MonthAt at, ArrayModel array, MonthLight light, Derived plane, Derived cell) {
        Derived optics = Derived.computed(
                at.label() + ": share of the light that enters the glass",
                light.opticalShare(),
                Unit.SHARE,
                new Formula(
                        "k = incidence-angle modifier of each hour's sun, sky and ground, weighted by light", OPTICS),
                plane.as("G"),
                array.position().tilt().as("b"));
        double heat = ArrayOutput.temperatureFactor(
                cell.value(), array.powerCoefficient().value());
        return Derived.computed(
                at.label() + ": yield of a rated watt, mean day",
                plane.value()
                        * optics.value()
                        * heat
                        * array.lossFactor().value()
                        * array.controllerEfficiency().value(),
                Unit.WATT_HOUR_PER_WATT,
                new Formula("y = G k (1 + gamma (Tc - 25)) f n / (1 kW/m2)", POWER),
                plane.as("G"),
                optics.as("k"),
                array.powerCoefficient().as("gamma"),
                cell.as("Tc"),
                array.lossFactor().as("f"),
                array.controllerEfficiency().as("n"));
    }
}
