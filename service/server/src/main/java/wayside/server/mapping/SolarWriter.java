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
                figures.at("/solar/powerW", array.powerW()),
                figures.at("/solar/areaM2", array.areaM2()),
                TRACKING,
                figures.at("/solar/controllerCurrentA", array.controllerCurrentA()),
                figures.at("/solar/controllerMaximumVoltageV", array.strings().controllerMaximumV()),
                strings(array.strings(), figures),
                months(system, array, figures),
                system.arrayNeed().worst().stay().index() + 1);
    }

    private static ArrayStringsView strings(ArrayStrings strings, Figures figures) {
        return new ArrayStringsView(
                (int) figures.at("/solar/strings/seriesCount", strings.seriesCount()),
                (int) figures.at("/solar/strings/parallelCount", strings.parallelCount()),
                figures.at("/solar/strings/coldOpenCircuitV", strings.coldOpenCircuitV()),
                figures.at("/solar/strings/hotWorkingV", strings.hotWorkingV()),
                strings.window().coldVoltage().method());
    }

    private static @Nullable Double catchUp(String at, Optional<Derived> days, Figures figures) {
        return days.map(found -> figures.at(at + "/catchUpDays", found)).orElse(null);
    }

    private static List<StaySunView> months(SizedSystem system, ArrayChoice array, Figures figures) {
        List<StaySunView> months = new ArrayList<>();
        for (StayBalance balance : system.arrayNeed().balances()) {
            int index = months.size();
            String at = "/solar/months/" + index;
            var month = balance.stay().month();
            months.add(new StaySunView(
                    index + 1,
                    balance.stay().stay().month(),
                    figures.at(at + "/horizontalKwhM2", month.horizontalKwhM2()),
                    figures.at(at + "/planeKwhM2", month.planeKwhM2()),
                    figures.at(at + "/yieldWhPerDay", array.yieldsWh().get(index)),
                    figures.at(at + "/needWhPerDay", balance.needWh()),
                    figures.at(
                            at + "/overWhPerDay", system.catchUps().get(index).overWh()),
                    catchUp(at, system.catchUps().get(index).days(), figures)));
        }
        return months;
    }
}
