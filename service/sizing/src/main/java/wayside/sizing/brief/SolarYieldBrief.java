package wayside.sizing.brief;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What a solar yield is asked for.
 *
 * @param at where it was given
 * @param panel how the panels sit, as far as the request says
 * @param solarPowerW rated power of the array [W]; each 100 W if absent
 * @param months all twelve if empty
 * @param busVoltageV nominal voltage of the bank [V], for the check of the strings; 12 if absent
 * @param strings checked if present
 */
public record SolarYieldBrief(
        At at,
        Place place,
        PanelMount panel,
        OptionalDouble solarPowerW,
        List<MonthWish> months,
        OptionalDouble busVoltageV,
        Optional<StringWish> strings)
        implements Placed {
    public SolarYieldBrief {
        months = List.copyOf(months);
    }

    /** A year at a place, everything else open. */
    public static SolarYieldBrief of(Place place) {
        return new SolarYieldBrief(
                At.ROOT,
                place,
                PanelMount.OPEN,
                OptionalDouble.empty(),
                List.of(),
                OptionalDouble.empty(),
                Optional.empty());
    }

    public SolarYieldBrief mounted(PanelMount newPanel) {
        return new SolarYieldBrief(at, place, newPanel, solarPowerW, months, busVoltageV, strings);
    }

    public SolarYieldBrief rated(double newSolarPowerW) {
        return new SolarYieldBrief(at, place, panel, OptionalDouble.of(newSolarPowerW), months, busVoltageV, strings);
    }

    public SolarYieldBrief in(MonthWish... newMonths) {
        return new SolarYieldBrief(at, place, panel, solarPowerW, List.of(newMonths), busVoltageV, strings);
    }

    public SolarYieldBrief wired(StringWish newStrings) {
        return new SolarYieldBrief(at, place, panel, solarPowerW, months, busVoltageV, Optional.of(newStrings));
    }

    public SolarYieldBrief at(Place newPlace) {
        return new SolarYieldBrief(at, newPlace, panel, solarPowerW, months, busVoltageV, strings);
    }
}
