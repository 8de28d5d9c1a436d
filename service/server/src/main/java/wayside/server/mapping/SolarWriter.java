package wayside.server.mapping;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import wayside.server.api.ArrayStringsView;
import wayside.server.api.SolarView;
import wayside.server.api.StaySunView;
import wayside.sizing.system.ArrayChoice;
import wayside.sizing.system.ArrayStrings;
import wayside.sizing.system.SizedSystem;
import wayside.sizing.system.StayBalance;
import wayside.sizing.trace.Derived;

/** The array of a recommendation. */
final class SolarWriter {
    private static final String TRACKING = "mppt";

    private SolarWriter() {}

    static @Nullable SolarView solar(SizedSystem system, Figures figures) {
        return system.array().map(array -> solar(system, array, figures)).orElse(null);
    }

    private static SolarView solar(SizedSystem system, ArrayChoice array, Figures figures) {
        return new SolarView(
                figures.at("powerW", array.powerW()),
                figures.at("areaM2", array.areaM2()),
                TRACKING,
                figures.at("controllerCurrentA", array.controllerCurrentA()),
                figures.at("controllerMaximumVoltageV", array.strings().controllerMaximumV()),
                strings(array.strings(), figures.in("strings")),
                months(system, array, figures.in("months")),
                system.arrayNeed().worst().stay().index() + 1);
    }

    private static ArrayStringsView strings(ArrayStrings strings, Figures figures) {
        return new ArrayStringsView(
                (int) figures.at("seriesCount", strings.seriesCount()),
                (int) figures.at("parallelCount", strings.parallelCount()),
                figures.at("coldOpenCircuitV", strings.coldOpenCircuitV()),
                figures.at("hotWorkingV", strings.hotWorkingV()),
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
