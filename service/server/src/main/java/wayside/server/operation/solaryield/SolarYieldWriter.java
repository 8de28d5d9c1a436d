package wayside.server.operation.solaryield;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import wayside.server.answer.Figures;
import wayside.server.answer.Tail;
import wayside.sizing.solar.sky.SkyMonth;
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
        double power = figures.at("solarPowerW", result.solarPowerW());
        List<YieldMonthView> months = new ArrayList<>();
        for (YieldMonth month : result.months()) {
            months.add(month(month, figures.in("months").entry(months.size())));
        }
        StringsView strings =
                result.strings().isPresent() ? strings(result.strings().get(), figures.in("strings")) : null;
        Tail tail = Tail.of(answer, figures);
        return new SolarYieldResponse(
                power, months, strings, tail.assumptions(), tail.cautions(), tail.engine(), tail.derivation());
    }

    private static YieldMonthView month(YieldMonth month, Figures figures) {
        SkyMonth sky = month.solar().sky();
        return new YieldMonthView(
                month.month(),
                sky.basis().code(),
                figures.at("clearnessIndex", sky.clearness()),
                figures.at("horizontalKwhM2", sky.horizontalKwhM2()),
                range(sky.lowKwhM2(), sky.highKwhM2(), figures.in("horizontalRangeKwhM2")),
                figures.at("planeKwhM2", month.solar().planeKwhM2()),
                figures.at("yieldWhPerDay", month.yieldWhPerDay()),
                range(month.lowWhPerDay(), month.highWhPerDay(), figures.in("yieldRangeWhPerDay")),
                figures.at("cellTemperatureC", month.solar().cellTemperatureC()),
                figures.at("ambientC", sky.meanC()),
                figures.at("daylightHours", month.sun().daylightHours()),
                figures.at("noonAltitudeDegrees", month.sun().noonAltitudeDegrees()),
                figures.at("bestTiltDegrees", month.tilt().bestTilt()),
                figures.at("lossAgainstBestTiltShare", month.tilt().lossShare()));
    }

    private static RangeView range(Derived low, Derived high, Figures figures) {
        return new RangeView(figures.at("low", low), figures.at("high", high));
    }

    private static @Nullable StringsView strings(StringCheck check, Figures figures) {
        return new StringsView(
                check.fits(),
                whole("seriesCount", check.seriesCount(), figures),
                whole("parallelCount", check.parallelCount(), figures),
                whole("smallestSeriesCount", check.window().smallestSeriesCount(), figures),
                whole("largestSeriesCount", check.window().largestSeriesCount(), figures),
                figures.at("coldOpenCircuitV", check.coldOpenCircuitV()),
                figures.at("hotWorkingV", check.hotWorkingV()),
                check.window().coldVoltage().method(),
                figures.at("controllerMaximumVoltageV", check.controllerMaximumV()),
                figures.at("chargingVoltageV", check.chargingV()),
                figures.at("maximumCurrentA", check.maximumCurrentA()),
                figures.at("conductorCurrentA", check.conductorCurrentA()),
                figures.at("withoutTrackerShare", check.withoutTrackerShare()));
    }

    private static int whole(String name, Derived count, Figures figures) {
        return (int) Math.round(figures.at(name, count));
    }
}
