package wayside.sizing.chance;

import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;
import wayside.sizing.brief.Objective;
import wayside.sizing.brief.Target;
import wayside.sizing.storage.ChemistryData;
import wayside.sizing.system.ArrayMass;
import wayside.sizing.system.BatteryPack;
import wayside.sizing.system.Chargers;
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

    static CurvePoint point(ChanceTrip trip, ChancePair pair) {
        ChemistryData data = trip.site().chemistry();
        Target target = trip.site().brief().target();
        Chargers chargers = trip.chargers(pair);
        double bankL = pair.pack()
                .map(BatteryPack::volumeL)
                .orElse(pair.bankWh() / data.energyDensityWhPerL().typical().value());
        double controllersL = pair.modules().map(StringOption::volumeL).orElse(0.0);
        double price = pair.bankWh() * target.bankPricePerWh().orElse(0)
                + pair.arrayW() * target.arrayPricePerW().orElse(0);
        return new CurvePoint(
                pair.bankWh(),
                pair.arrayW(),
                chargers.alternator().map(a -> a.chargerCurrentA().value()),
                massKg(trip, pair, chargers),
                bankL + controllersL + chargers.volumeL(),
                price);
    }

    /** Of those that cost at most this much more than the least, the smallest bank is taken: it lives least off what it holds. */
    private static final double AS_GOOD = 1.02;

    static ChancePair best(List<ChancePair> pairs, ToDoubleFunction<ChancePair> cost) {
        double least = pairs.stream().mapToDouble(cost).min().orElseThrow();
        return pairs.stream()
                .filter(pair -> cost.applyAsDouble(pair) <= AS_GOOD * least)
                .min(Comparator.comparingDouble(ChancePair::bankWh).thenComparingDouble(cost))
                .orElseThrow();
    }

    /** Of batteries, modules, controllers and chargers [kg]. */
    static double massKg(ChanceTrip trip, ChancePair pair, Chargers chargers) {
        double bankKg = pair.pack()
                .map(BatteryPack::massKg)
                .orElseGet(() -> pair.bankWh()
                        / trip.site()
                                .chemistry()
                                .specificEnergyWhPerKg()
                                .typical()
                                .value());
        double arrayKg = pair.modules()
                .map(StringOption::massKg)
                .orElseGet(() -> pair.arrayW() * ArrayMass.kgPerW().value());
        return bankKg + arrayKg + chargers.massKg();
    }

    static double cost(CurvePoint point, Objective objective) {
        return switch (objective) {
            case PRICE -> point.price();
            case MASS -> point.massKg();
            case VOLUME -> point.volumeL();
        };
    }
}
