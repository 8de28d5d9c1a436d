package wayside.server.mapping;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import wayside.server.api.RangeView;
import wayside.server.api.SolarYieldResponse;
import wayside.server.api.StringsView;
import wayside.server.api.YieldMonthView;
import wayside.sizing.solar.SkyMonth;
import wayside.sizing.trace.Answer;
import wayside.sizing.trace.Derived;
import wayside.sizing.yield.SolarYield;
import wayside.sizing.yield.StringCheck;
import wayside.sizing.yield.YieldMonth;

/** The answer of a solar yield. */
public final class SolarYieldWriter {
    private SolarYieldWriter() {}

    public static SolarYieldResponse write(Answer<SolarYield> answer, Figures figures) {
        SolarYield result = answer.result();
        double power = figures.at("/solarPowerW", result.solarPowerW());
        List<YieldMonthView> months = new ArrayList<>();
        for (YieldMonth month : result.months()) {
            months.add(month(month, "/months/" + months.size(), figures));
        }
        StringsView strings =
                result.strings().isPresent() ? strings(result.strings().get(), figures) : null;
        Tail tail = Tail.of(answer, figures);
        return new SolarYieldResponse(
                power, months, strings, tail.derivation(), tail.assumptions(), tail.cautions(), tail.steps());
    }

    private static YieldMonthView month(YieldMonth month, String at, Figures figures) {
        SkyMonth sky = month.solar().sky();
        return new YieldMonthView(
                month.month(),
                sky.basis().code(),
                figures.at(at + "/clearnessIndex", sky.clearness()),
                figures.at(at + "/horizontalKwhM2", sky.horizontalKwhM2()),
                range(at + "/horizontalRangeKwhM2", sky.lowKwhM2(), sky.highKwhM2(), figures),
                figures.at(at + "/planeKwhM2", month.solar().planeKwhM2()),
                figures.at(at + "/yieldWhPerDay", month.yieldWhPerDay()),
                range(at + "/yieldRangeWhPerDay", month.lowWhPerDay(), month.highWhPerDay(), figures),
                figures.at(at + "/cellTemperatureC", month.solar().cellTemperatureC()),
                figures.at(at + "/ambientC", sky.meanC()),
                figures.at(at + "/daylightHours", month.sun().daylightHours()),
                figures.at(at + "/noonAltitudeDegrees", month.sun().noonAltitudeDegrees()),
                figures.at(at + "/bestTiltDegrees", month.tilt().bestTilt()),
                figures.at(at + "/lossAgainstBestTiltShare", month.tilt().lossShare()));
    }

    private static RangeView range(String at, Derived low, Derived high, Figures figures) {
        return new RangeView(figures.at(at + "/low", low), figures.at(at + "/high", high));
    }

    private static @Nullable StringsView strings(StringCheck check, Figures figures) {
        return new StringsView(
                check.fits(),
                whole("/strings/seriesCount", check.seriesCount(), figures),
                whole("/strings/parallelCount", check.parallelCount(), figures),
                whole("/strings/smallestSeriesCount", check.window().smallestSeriesCount(), figures),
                whole("/strings/largestSeriesCount", check.window().largestSeriesCount(), figures),
                figures.at("/strings/coldOpenCircuitV", check.coldOpenCircuitV()),
                figures.at("/strings/hotWorkingV", check.hotWorkingV()),
                check.window().coldVoltage().method(),
                figures.at("/strings/controllerMaximumVoltageV", check.controllerMaximumV()),
                figures.at("/strings/chargingVoltageV", check.chargingV()),
                figures.at("/strings/maximumCurrentA", check.maximumCurrentA()),
                figures.at("/strings/conductorCurrentA", check.conductorCurrentA()),
                figures.at("/strings/withoutTrackerShare", check.withoutTrackerShare()));
    }

    private static int whole(String at, Derived count, Figures figures) {
        return (int) Math.round(figures.at(at, count));
    }
}
