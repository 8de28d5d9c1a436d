package wayside.sizing.yield;

import java.util.List;
import java.util.Optional;
import wayside.sizing.brief.SolarYieldBrief;
import wayside.sizing.solar.SolarMonth;
import wayside.sizing.solar.epw.TypicalYear;
import wayside.sizing.trace.Assumption;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Source;
import wayside.sizing.trace.Unit;

/**
 * What an array brings, month by month.
 *
 * @param solarPowerW rated power of the array [W]
 * @param months in the order asked
 * @param strings when the modules were described
 */
public record SolarYield(Derived solarPowerW, List<YieldMonth> months, Optional<StringCheck> strings) {
    private static final double EACH_W = 100;

    public SolarYield {
        months = List.copyOf(months);
    }

    /** Under the sky that the brief gives, or the climatology of its place. */
    public static SolarYield of(SolarYieldBrief brief) {
        Derived power = power(brief);
        return of(brief, power, YieldMonths.of(brief, power));
    }

    /** In the hours of a typical year, whose place the brief has. */
    public static SolarYield of(SolarYieldBrief brief, TypicalYear year) {
        Derived power = power(brief);
        return of(brief, power, YieldMonths.of(brief, year, power));
    }

    private static SolarYield of(SolarYieldBrief brief, Derived power, List<YieldMonth> months) {
        List<SolarMonth> solar = months.stream().map(YieldMonth::solar).toList();
        return new SolarYield(power, months, brief.strings().map(wish -> StringChecker.check(brief, wish, solar)));
    }

    private static Derived power(SolarYieldBrief brief) {
        return Derived.byDefault(
                        "array: rated power",
                        EACH_W,
                        Unit.WATT,
                        brief.at("solarPowerW"),
                        "The yield of each 100 W; it grows in proportion",
                        Source.definition())
                .unlessGiven(brief.solarPowerW());
    }

    /** Defaults that are no numbers. */
    public List<Assumption> choices() {
        return months.stream()
                .flatMap(month -> month.solar().choices().stream())
                .toList();
    }
}
