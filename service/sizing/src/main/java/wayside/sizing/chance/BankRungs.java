package wayside.sizing.chance;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;
import wayside.sizing.chance.ChancePair.BankTried;
import wayside.sizing.system.BankChoice;
import wayside.sizing.system.BatteryPack;
import wayside.sizing.system.Site;

/** The banks that a search tries, by rising energy: those that can be bought, have room and give the highest current. */
final class BankRungs {
    private BankRungs() {}

    /** The one that the brief gives by itself. */
    static List<BankTried> of(ChanceTrip trip) {
        OptionalDouble given = trip.site().brief().system().nominalEnergyWh();
        return given.isPresent()
                ? List.of(BankTried.given(given.getAsDouble()))
                : bought(trip.site(), trip.leastBankWh());
    }

    private static List<BankTried> bought(Site site, double byDaysWh) {
        double leastWh = Math.max(byDaysWh, BankChoice.leastWh(site).value());
        Map<Double, BatteryPack> byEnergy = new TreeMap<>();
        BatteryPack.withRoom(site, site.chemistry()).stream()
                .filter(pack -> pack.energyWh() >= leastWh)
                .sorted(Comparator.comparingInt(BatteryPack::count))
                .forEach(pack -> byEnergy.putIfAbsent(pack.energyWh(), pack));
        return worthwhile(new ArrayList<>(byEnergy.values()));
    }

    /** Without those that a bank of fewer batteries and hardly more energy takes the place of. */
    private static List<BankTried> worthwhile(List<BatteryPack> all) {
        return all.stream()
                .filter(pack -> all.stream()
                        .noneMatch(other -> other.count() < pack.count()
                                && other.energyWh() >= pack.energyWh()
                                && other.energyWh() <= 1.1 * pack.energyWh()))
                .map(BankTried::of)
                .toList();
    }
}
