package wayside.sizing.chance;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import wayside.sizing.brief.Objective;
import wayside.sizing.brief.Target;
import wayside.sizing.storage.ChemistryData;
import wayside.sizing.system.TypicalModule;
import wayside.sizing.system.TypicalRoof;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Source;
import wayside.sizing.trace.Unit;

/** Chooses a pair of the curve. */
final class ChancePick {
    private ChancePick() {}

    /** Mass of framed panels with their brackets. Common practice, no source. */
    static Derived panelMassKgPerW() {
        return Derived.convention(
                "mass of a watt of panel",
                0.07,
                Unit.COUNT,
                "kg for each W: framed modules of 100 W weigh 6 to 8 kg with brackets",
                Source.commonPractice());
    }

    static Objective objective(Target target) {
        Objective wanted = target.objective().orElse(Objective.MASS);
        boolean priced =
                target.bankPricePerWh().isPresent() && target.arrayPricePerW().isPresent();
        return wanted == Objective.PRICE && !priced ? Objective.MASS : wanted;
    }

    static List<CurvePoint> points(List<double[]> pairs, ChemistryData data, Target target) {
        List<CurvePoint> points = new ArrayList<>();
        for (double[] pair : pairs) {
            points.add(new CurvePoint(
                    pair[0],
                    pair[1],
                    pair[0] / data.specificEnergyWhPerKg().typical().value()
                            + pair[1] * panelMassKgPerW().value(),
                    pair[0] / data.energyDensityWhPerL().typical().value(),
                    pair[0] * target.bankPricePerWh().orElse(0)
                            + pair[1] * target.arrayPricePerW().orElse(0)));
        }
        return points;
    }

    /** The best point that fits a roof, or the one with the smallest array. */
    static CurvePoint best(List<CurvePoint> points, Objective objective) {
        double density = TypicalModule.powerPerArea().value();
        return points.stream()
                .filter(point -> point.solarPowerW() <= TypicalRoof.AREA_M2 * density)
                .min(Comparator.comparingDouble(point -> cost(point, objective)))
                .orElseGet(() -> points.get(0));
    }

    private static double cost(CurvePoint point, Objective objective) {
        return switch (objective) {
            case PRICE -> point.price();
            case MASS -> point.massKg();
            case VOLUME -> point.volumeL();
        };
    }
}
