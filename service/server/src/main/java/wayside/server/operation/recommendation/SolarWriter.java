package wayside.server.operation.recommendation;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import wayside.server.answer.Figures;
import wayside.sizing.system.ArrayChoice;
import wayside.sizing.system.ArrayStrings;
import wayside.sizing.system.BuyableArray;
import wayside.sizing.system.SizedSystem;
import wayside.sizing.system.StayBalance;
import wayside.sizing.trace.Derived;

/** The array of a recommendation. */
final class SolarWriter {
    private static final String TRACKING = "mppt";

    private SolarWriter() {}

    /**
     * @param byDays whether the worst stay decided
     */
    static @Nullable SolarView solar(SizedSystem system, boolean byDays, Figures figures) {
        return system.array()
                .map(array -> solar(system, array, byDays, figures))
                .orElse(null);
    }

    private static SolarView solar(SizedSystem system, ArrayChoice array, boolean byDays, Figures figures) {
        return new SolarView(
                figures.at("powerW", array.powerW()),
                figures.at("areaM2", array.areaM2()),
                figures.at("roofAreaM2", array.roofM2()),
                byDays
                        ? new PowerNeedView(figures.in("needed")
                                .at("powerW", system.arrayNeed().worst().arrayW()))
                        : null,
                array.buyable()
                        .map(modules -> buyable(modules, figures.in("buyable")))
                        .orElse(null),
                figures.at("controllerNeededA", array.controllers().neededA()),
                TRACKING,
                (int) figures.at("controllerCount", array.controllers().count()),
                figures.at("controllerCurrentA", array.controllers().ratedA()),
                figures.at("controllerMaximumVoltageV", array.strings().controllerMaximumV()),
                strings(array, figures.in("strings")),
                months(system, array, figures.in("months")),
                system.arrayNeed().worst().stay().index() + 1);
    }

    private static BuyableArrayView buyable(BuyableArray modules, Figures figures) {
        return new BuyableArrayView(
                (int) figures.at("count", modules.count()),
                figures.at("modulePowerW", modules.modulePowerW()),
                figures.at("lengthMm", modules.lengthMm()),
                figures.at("widthMm", modules.widthMm()),
                figures.at("massKg", modules.massKg()),
                (int) figures.at("roofTakes", modules.roofTakes()));
    }

    private static ArrayStringsView strings(ArrayChoice array, Figures figures) {
        ArrayStrings strings = array.strings();
        return new ArrayStringsView(
                (int) figures.at("seriesCount", strings.seriesCount()),
                (int) figures.at("parallelCount", strings.parallelCount()),
                figures.at("modulePowerW", strings.modulePowerW()),
                figures.at("coldOpenCircuitV", strings.coldOpenCircuitV()),
                figures.at("hotWorkingV", strings.hotWorkingV()),
                figures.at("otherStringsA", array.stringFuses().othersA()),
                figures.at("largestSeriesFuseA", array.stringFuses().limitA()),
                strings.window().coldVoltage().method());
    }

    private static @Nullable Double catchUp(Optional<Derived> days, Figures figures) {
        return days.map(found -> figures.at("catchUpDays", found)).orElse(null);
    }

    private static List<StaySunView> months(SizedSystem system, ArrayChoice array, Figures figures) {
        List<StaySunView> months = new ArrayList<>();
        for (StayBalance balance : system.arrayNeed().balances()) {
            int index = months.size();
            Figures here = figures.entry(index);
            var month = balance.stay().month();
            months.add(new StaySunView(
                    index + 1,
                    balance.stay().stay().month(),
                    here.at("horizontalKwhM2", month.horizontalKwhM2()),
                    here.at("planeKwhM2", month.planeKwhM2()),
                    here.at("yieldWhPerDay", array.yieldsWh().get(index)),
                    here.at("needWhPerDay", balance.needWh()),
                    here.at("overWhPerDay", system.catchUps().get(index).overWh()),
                    catchUp(system.catchUps().get(index).days(), here)));
        }
        return months;
    }
}
