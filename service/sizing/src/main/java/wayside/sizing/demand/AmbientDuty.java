package wayside.sizing.demand;

import java.util.ArrayList;
import java.util.List;
import wayside.sizing.brief.DutyPoint;
import wayside.sizing.brief.Load;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Input;
import wayside.sizing.trace.NamedOperation;
import wayside.sizing.trace.Source;
import wayside.sizing.trace.Unit;

/** Duty cycle of a compressor fridge, read off its own curve of duty against ambient temperature. */
public final class AmbientDuty {
    private static final NamedOperation BETWEEN_POINTS = NamedOperation.of(
            NamedOperation.Kind.INTERPOLATION,
            "Linear between the two temperatures T around Ta, of the duties d that belong to them; held at the ends",
            Source.definition());

    private AmbientDuty() {}

    static Derived at(Load load, Derived ambientC, String stay) {
        List<DutyPoint> points = load.ambientDuty();
        List<Input> inputs = new ArrayList<>(List.of(ambientC.as("Ta")));
        for (DutyPoint point : points) {
            String name = load.name() + ": duty at " + trimmed(point.ambientC()) + " C";
            inputs.add(Derived.given(name + ", its temperature", point.ambientC(), Unit.CELSIUS, point.at("ambientC"))
                    .as("T"));
            inputs.add(Derived.given(name, point.dutyCycle(), Unit.SHARE, point.at("dutyCycle"))
                    .as("d"));
        }
        return BETWEEN_POINTS.value(
                stay + load.name() + ": duty cycle", interpolate(points, ambientC.value()), Unit.SHARE, inputs);
    }

    /**
     * Duty at a temperature, linear between points and constant beyond the ends.
     *
     * @param points by rising temperature, not empty
     * @param ambientC [C]
     * @return [share]
     */
    public static double interpolate(List<DutyPoint> points, double ambientC) {
        DutyPoint low = points.get(0);
        if (ambientC <= low.ambientC()) {
            return low.dutyCycle();
        }
        for (DutyPoint high : points) {
            if (ambientC <= high.ambientC() && high.ambientC() > low.ambientC()) {
                double part = (ambientC - low.ambientC()) / (high.ambientC() - low.ambientC());
                return low.dutyCycle() + part * (high.dutyCycle() - low.dutyCycle());
            }
            low = high;
        }
        return low.dutyCycle();
    }

    private static String trimmed(double value) {
        return value == Math.rint(value) ? Long.toString((long) value) : Double.toString(value);
    }
}
