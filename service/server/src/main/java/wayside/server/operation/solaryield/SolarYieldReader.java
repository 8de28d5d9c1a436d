package wayside.server.operation.solaryield;

import java.util.List;
import wayside.server.operation.shared.Given;
import wayside.server.operation.shared.SystemReader;
import wayside.server.operation.shared.TripReader;
import wayside.sizing.brief.At;
import wayside.sizing.brief.MonthWish;
import wayside.sizing.brief.Place;
import wayside.sizing.brief.SolarModule;
import wayside.sizing.brief.SolarYieldBrief;
import wayside.sizing.brief.StringWish;

/** The question of a solar yield. */
public final class SolarYieldReader {
    private SolarYieldReader() {}

    public static SolarYieldBrief read(SolarYieldRequest request) {
        return read(At.ROOT, request);
    }

    /** The question that stands there. */
    public static SolarYieldBrief read(At at, SolarYieldRequest request) {
        return new SolarYieldBrief(
                at,
                TripReader.place(at.field("place"), request.place()),
                SystemReader.panel(at.field("panel"), request.panel()),
                Given.number(request.solarPowerW()),
                Given.list(at.field("months"), request.months(), SolarYieldReader::month),
                Given.number(request.busVoltageV()),
                Given.map(at.field("strings"), request.strings(), SolarYieldReader::strings));
    }

    /** The question of a typical year, whose place and months are the file's. */
    public static SolarYieldBrief read(SolarYieldOfYearRequest request, Place place) {
        At at = At.ROOT;
        return new SolarYieldBrief(
                at,
                place,
                SystemReader.panel(at.field("panel"), request.panel()),
                Given.number(request.solarPowerW()),
                List.of(),
                Given.number(request.busVoltageV()),
                Given.map(at.field("strings"), request.strings(), SolarYieldReader::strings));
    }

    private static MonthWish month(At at, MonthInput month) {
        return new MonthWish(
                at,
                month.month(),
                Given.map(at.field("sky"), month.sky(), TripReader::sky),
                Given.map(at.field("ambient"), month.ambient(), TripReader::ambient));
    }

    private static StringWish strings(At at, StringsInput strings) {
        return new StringWish(
                at,
                module(at.field("module"), strings.module()),
                Given.whole(strings.seriesCount()),
                Given.whole(strings.parallelCount()),
                Given.number(strings.controllerMaximumVoltageV()),
                Given.number(strings.coldestC()));
    }

    private static SolarModule module(At at, SolarModuleInput module) {
        return new SolarModule(
                at,
                module.openCircuitV(),
                module.workingV(),
                module.shortCircuitA(),
                Given.number(module.voltagePerK()));
    }
}
