package wayside.sizing.demand;

import java.util.ArrayList;
import java.util.List;
import wayside.sizing.brief.DutyPoint;
import wayside.sizing.brief.Load;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Formula;
import wayside.sizing.trace.Input;
import wayside.sizing.trace.Unit;

/** Duty cycle of a compressor fridge, read off its own curve of duty against ambient temperature. */
public final class AmbientDuty {
    private static final Formula INTERPOLATION =
            Formula.definition("d = d1 + (d2 - d1) (Ta - T1) / (T2 - T1), held at the ends");

    private AmbientDuty() {}

    static Derived at(Load load, Derived ambientC) {
        List<DutyPoint> points = load.ambientDuty();
        List<Input> inputs = new ArrayList<>(List.of(ambientC.as("Ta")));
        for (int i = 0; i < points.size(); i++) {
            String name = load.name() + ": duty at " + trimmed(points.get(i).ambientC()) + " C";
            inputs.add(Derived.given(name, points.get(i).dutyCycle(), Unit.SHARE, points.get(i).at("dutyCycle"))
                    .as("d" + (i + 1)));
        }
        return Derived.computed(
                load.name() + ": duty cycle",
                interpolate(points, ambientC.value()),
                Unit.SHARE,
                INTERPOLATION,
                inputs.toArray(Input[]::new));
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
