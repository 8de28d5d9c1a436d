package wayside.server.mapping;

import java.util.List;
import org.jspecify.annotations.Nullable;
import wayside.server.api.MonthInput;
import wayside.server.api.SolarModuleInput;
import wayside.server.api.SolarYieldOfYearRequest;
import wayside.server.api.SolarYieldRequest;
import wayside.server.api.StringsInput;
import wayside.sizing.brief.MonthWish;
import wayside.sizing.brief.Place;
import wayside.sizing.brief.SolarModule;
import wayside.sizing.brief.SolarYieldBrief;
import wayside.sizing.brief.StringWish;

/** The question of a solar yield. */
public final class SolarYieldReader {
    private SolarYieldReader() {}

    public static SolarYieldBrief read(SolarYieldRequest request) {
        return new SolarYieldBrief(
                TripReader.place(request.place()),
                SystemReader.panel(request.panel()),
                Given.number(request.solarPowerW()),
                months(request.months()),
                Given.number(request.busVoltageV()),
                Given.map(request.strings(), SolarYieldReader::strings));
    }

    /** The question of a typical year, whose place and months are the file's. */
    public static SolarYieldBrief read(SolarYieldOfYearRequest request, Place place) {
        return new SolarYieldBrief(
                place,
                SystemReader.panel(request.panel()),
                Given.number(request.solarPowerW()),
                List.of(),
                Given.number(request.busVoltageV()),
                Given.map(request.strings(), SolarYieldReader::strings));
    }

    private static List<MonthWish> months(@Nullable List<MonthInput> months) {
        return months == null
                ? List.of()
                : months.stream().map(SolarYieldReader::month).toList();
    }

    private static MonthWish month(MonthInput month) {
        return new MonthWish(
                month.month(),
                Given.map(month.sky(), TripReader::sky),
                Given.map(month.ambient(), TripReader::ambient));
    }

    private static StringWish strings(StringsInput strings) {
        return new StringWish(
                module(strings.module()),
                Given.whole(strings.seriesCount()),
                Given.whole(strings.parallelCount()),
                Given.number(strings.controllerMaximumVoltageV()),
                Given.number(strings.coldestC()));
    }

    private static SolarModule module(SolarModuleInput module) {
        return new SolarModule(
                module.openCircuitV(), module.workingV(), module.shortCircuitA(), Given.number(module.voltagePerK()));
    }
}
