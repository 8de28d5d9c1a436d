package wayside.sizing.solar;

import java.util.List;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Formula;
import wayside.sizing.trace.Input;
import wayside.sizing.trace.Source;
import wayside.sizing.trace.Unit;

/** The coldest morning and the hottest roof of a set of months: what a string of modules must stand. */
public final class RoofExtremes {
    /** A cold spell against the mean morning of its month. */
    private static final double COLD_SPELL_K = 10;

    private static final double FULL_SUN_W_M2 = 1000;

    private RoofExtremes() {}

    /**
     * Air on the coldest morning: {@code T = min(Tm - D / 2) - s}. Common practice, no source.
     *
     * @param months not empty
     * @return [C]
     */
    public static Derived coldestC(List<SolarMonth> months) {
        SkyMonth coldest = months.get(0).sky();
        for (SolarMonth month : months) {
            coldest = morning(month.sky()) < morning(coldest) ? month.sky() : coldest;
        }
        Derived spell = Derived.convention("cold spell below the mean morning", COLD_SPELL_K, Unit.KELVIN, "Single mornings fall about this far below the month's mean one; give a record low if you know it", Source.commonPractice());
        return Derived.computed(
                "air on the coldest morning",
                morning(coldest) - COLD_SPELL_K,
                Unit.CELSIUS,
                Formula.commonPractice("T = Tm - D/2 - s, of the coldest month"),
                coldest.meanC().as("Tm"),
                coldest.dailySwingK().as("D"),
                spell.as("s"));
    }

    /**
     * Cells on the hottest roof in full sun: {@code Tc = max(Tm + D / 2) + 1000 r}.
     *
     * @param months not empty
     * @return [C]
     */
    public static Derived hottestCellC(List<SolarMonth> months) {
        SolarMonth hottest = months.get(0);
        for (SolarMonth month : months) {
            hottest = afternoon(month.sky()) > afternoon(hottest.sky()) ? month : hottest;
        }
        Derived rise = hottest.array().riseKPerWm2();
        Input[] inputs = {
            hottest.sky().meanC().as("Tm"), hottest.sky().dailySwingK().as("D"), rise.as("r")
        };
        return Derived.computed(
                "cells on the hottest roof",
                CellTemperature.cellC(afternoon(hottest.sky()), FULL_SUN_W_M2, rise.value()),
                Unit.CELSIUS,
                new Formula("Tc = Tm + D/2 + 1000 r, of the hottest month", rise.source()),
                inputs);
    }

    private static double morning(SkyMonth sky) {
        return sky.meanC().value() - sky.dailySwingK().value() / 2;
    }

    private static double afternoon(SkyMonth sky) {
        return sky.meanC().value() + sky.dailySwingK().value() / 2;
    }
}
