package wayside.sizing.system;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wayside.sizing.brief.BatterySize;
import wayside.sizing.sizes.NextSize;
import wayside.sizing.storage.BatteryBank;
import wayside.sizing.storage.ChemistryData;

/**
 * Equal batteries in series and side by side.
 *
 * @param series in each string
 * @param parallel strings
 */
public record BatteryPack(BatterySize battery, int series, int parallel) {
    /** How far the volts of a string may lie off those of the bank: 12 V on a label that means 12.8 V [share]. */
    private static final double NEAR = 0.08;

    /** Rated [Wh]. */
    public double energyWh() {
        return count() * battery.energyWh();
    }

    public int count() {
        return series * parallel;
    }

    /** [kg] */
    public double massKg() {
        return count() * battery.massKg();
    }

    /** [L] */
    public double volumeL() {
        return count() * battery.box().volumeL();
    }

    /** Every bank of a chemistry that can be bought for the bus. */
    public static List<BatteryPack> all(Site site, ChemistryData data) {
        double bankV = BatteryBank.bankVoltage(data, site.busVoltageV()).value();
        List<BatteryPack> all = new ArrayList<>();
        for (BatterySize battery : site.sizes().batteries()) {
            int series = (int) Math.round(bankV / battery.voltageV());
            boolean serves = battery.chemistry() == data.chemistry()
                    && series >= 1
                    && series <= battery.mostInSeries()
                    && Math.abs(series * battery.voltageV() / bankV - 1) <= NEAR;
            for (int parallel = 1; serves && parallel <= battery.mostInParallel(); parallel++) {
                all.add(new BatteryPack(battery, series, parallel));
            }
        }
        return all;
    }

    /** Those of them that fit the locker; all of them where none does. */
    public static List<BatteryPack> withRoom(Site site, ChemistryData data) {
        List<BatteryPack> all = all(site, data);
        LockerRoom locker = new LockerRoom(site.brief().system().locker());
        List<BatteryPack> fitting = all.stream().filter(locker::takes).toList();
        return fitting.isEmpty() ? all : fitting;
    }

    /** The next at or above a need, in the locker where one that will do fits there; empty where the ladder ends below it. */
    static Optional<BatteryPack> next(Site site, ChemistryData data, double neededWh) {
        List<BatteryPack> all = all(site, data);
        LockerRoom locker = new LockerRoom(site.brief().system().locker());
        return least(all.stream().filter(locker::takes).toList(), neededWh).or(() -> least(all, neededWh));
    }

    private static Optional<BatteryPack> least(List<BatteryPack> all, double neededWh) {
        return NextSize.least(
                all, pack -> NextSize.reaches(pack.energyWh(), neededWh), BatteryPack::energyWh, BatteryPack::count);
    }
}
