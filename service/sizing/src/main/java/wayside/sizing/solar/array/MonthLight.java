package wayside.sizing.solar.array;

import java.util.ArrayList;
import java.util.List;
import wayside.sizing.solar.sky.MonthAt;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Input;
import wayside.sizing.trace.NamedOperation;
import wayside.sizing.trace.Unit;

/**
 * What a month's hours make of its horizontal irradiation, by a model of its days or from a file of its hours.
 *
 * @param planeRatio irradiation on the plane over that on the horizontal [1]
 * @param opticalShare of the light on the plane that enters the glass [share]
 * @param cellC mean of the cells, each hour counting by the light that enters [C]
 */
public record MonthLight(Derived planeRatio, Derived opticalShare, Derived cellC) {
    /**
     * How a month's hours are added up.
     *
     * @param onPlane to the ratio
     * @param entering to the share that enters the glass
     * @param heating to the temperature of the cells
     */
    public record Method(NamedOperation onPlane, NamedOperation entering, NamedOperation heating) {
        /**
         * What was added up.
         *
         * @param light what the light was found from: the place, the month, its sky, and the array's plane
         * @param heat what the cells' temperature needs besides
         */
        public MonthLight light(
                MonthAt at, double planeRatio, double opticalShare, double cellC, List<Input> light, List<Input> heat) {
            List<Input> all = new ArrayList<>(light);
            all.addAll(heat);
            return new MonthLight(
                    onPlane.value(
                            at.label() + ": light on the panel over light on the ground",
                            planeRatio,
                            Unit.COUNT,
                            light),
                    entering.value(
                            at.label() + ": share of the light that enters the glass", opticalShare, Unit.SHARE, light),
                    heating.value(at.label() + ": cell temperature in the sun", cellC, Unit.CELSIUS, all));
        }
    }

    /** The place, the month and the plane of an array; a flat one faces nowhere and sees no ground. */
    public static List<Input> inputs(MonthAt at, ArrayModel array) {
        PanelPosition position = array.position();
        List<Input> inputs = new ArrayList<>(List.of(
                at.latitudeDegrees().as("L"),
                at.monthOfYear().as("month"),
                position.tilt().as("b")));
        if (!position.plane().isHorizontal()) {
            inputs.add(position.azimuth().as("A"));
            inputs.add(array.albedo().as("rho"));
        }
        return inputs;
    }
}
