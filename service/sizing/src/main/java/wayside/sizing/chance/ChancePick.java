package wayside.sizing.chance;

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
        double bankKg = pair.pack()
                .map(BatteryPack::massKg)
                .orElse(pair.bankWh() / data.specificEnergyWhPerKg().typical().value());
        double arrayKg = pair.modules()
                .map(StringOption::massKg)
                .orElse(pair.arrayW() * ArrayMass.kgPerW().value());
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
                bankKg + arrayKg + chargers.massKg(),
                bankL + controllersL + chargers.volumeL(),
                price);
    }

    static double cost(CurvePoint point, Objective objective) {
        return switch (objective) {
            case PRICE -> point.price();
            case MASS -> point.massKg();
            case VOLUME -> point.volumeL();
        };
    }
}
