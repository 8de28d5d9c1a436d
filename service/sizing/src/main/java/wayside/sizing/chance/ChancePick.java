package wayside.sizing.chance;

import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import wayside.sizing.brief.Objective;
import wayside.sizing.brief.Target;
import wayside.sizing.storage.ChemistryData;
import wayside.sizing.system.ArrayMass;
import wayside.sizing.system.BatteryPack;
import wayside.sizing.system.StringOption;

/** Chooses a pair of the curve. */
final class ChancePick {
    private ChancePick() {}

    static Objective objective(Target target) {
        Objective wanted = target.objective().orElse(Objective.MASS);
        boolean priced =
                target.bankPricePerWh().isPresent() && target.arrayPricePerW().isPresent();
        return wanted == Objective.PRICE && !priced ? Objective.MASS : wanted;
    }

    static List<CurvePoint> points(List<ChancePair> pairs, ChemistryData data, Target target) {
        return pairs.stream().map(pair -> point(pair, data, target)).toList();
    }

    private static CurvePoint point(ChancePair pair, ChemistryData data, Target target) {
        double bankKg = pair.pack()
                .map(BatteryPack::massKg)
                .orElse(pair.bankWh() / data.specificEnergyWhPerKg().typical().value());
        double arrayKg = pair.modules()
                .map(StringOption::massKg)
                .orElse(pair.arrayW() * ArrayMass.kgPerW().value());
        double bankL = pair.pack()
                .map(BatteryPack::volumeL)
                .orElse(pair.bankWh() / data.energyDensityWhPerL().typical().value());
        double price = pair.bankWh() * target.bankPricePerWh().orElse(0)
                + pair.arrayW() * target.arrayPricePerW().orElse(0);
        return new CurvePoint(pair.bankWh(), pair.arrayW(), bankKg + arrayKg, bankL, price);
    }

    /** The best of points in the order of their pairs. */
    static int best(List<CurvePoint> points, Objective objective) {
        return IntStream.range(0, points.size())
                .boxed()
                .min(Comparator.comparingDouble(i -> cost(points.get(i), objective)))
                .orElseThrow();
    }

    private static double cost(CurvePoint point, Objective objective) {
        return switch (objective) {
            case PRICE -> point.price();
            case MASS -> point.massKg();
            case VOLUME -> point.volumeL();
        };
    }
}
