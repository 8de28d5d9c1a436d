package wayside.sizing.chance;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import wayside.sizing.system.BankChoice;
import wayside.sizing.system.BatteryPack;
import wayside.sizing.system.Site;

/** The banks that can be bought and give the highest current, by rising energy. */
final class BankRungs {
    private BankRungs() {}

    static List<BatteryPack> of(Site site) {
        double leastWh = BankChoice.leastWh(site).value();
        Map<Double, BatteryPack> byEnergy = new TreeMap<>();
        BatteryPack.all(site, site.chemistry()).stream()
                .filter(pack -> pack.energyWh() >= leastWh)
                .sorted(Comparator.comparingInt(BatteryPack::count))
                .forEach(pack -> byEnergy.putIfAbsent(pack.energyWh(), pack));
        return worthwhile(new ArrayList<>(byEnergy.values()));
    }

    /** Without those that a bank of fewer batteries and hardly more energy takes the place of. */
    private static List<BatteryPack> worthwhile(List<BatteryPack> all) {
        return all.stream()
                .filter(pack -> all.stream()
                        .noneMatch(other -> other.count() < pack.count()
                                && other.energyWh() >= pack.energyWh()
                                && other.energyWh() <= 1.1 * pack.energyWh()))
                .toList();
    }
}
