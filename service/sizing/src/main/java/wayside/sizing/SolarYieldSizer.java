package wayside.sizing;

import wayside.sizing.brief.SolarYieldBrief;
import wayside.sizing.solar.epw.TypicalYear;
import wayside.sizing.solar.plane.Extraterrestrial;
import wayside.sizing.trace.Answer;
import wayside.sizing.yield.SolarYield;
import wayside.sizing.yield.SolarYieldCautions;

/** The solar yield: what an array brings at a place, month by month. */
public final class SolarYieldSizer {
    private SolarYieldSizer() {}

    /** The yield under the sky that the brief gives, or the climatology of its place. */
    public static Answer<SolarYield> size(SolarYieldBrief brief) {
        return answer(brief, SolarYield.of(brief));
    }

    /** The yield of a typical year: each of its hours carried onto the panel. The place is the file's. */
    public static Answer<SolarYield> size(SolarYieldBrief brief, TypicalYear year) {
        SolarYieldBrief there = brief.at(year.place());
        return answer(there, SolarYield.of(there, year));
    }

    /**
     * What no month can bring more of than: the sunshine above the atmosphere on its mean day.
     *
     * @param latitude north positive, -90 to 90 [deg]
     * @param month 1 to 12
     * @return [kWh/m2], 0 in polar night
     */
    public static double mostKwhM2(double latitude, int month) {
        return Extraterrestrial.monthlyKwhM2(latitude, month);
    }

    private static Answer<SolarYield> answer(SolarYieldBrief brief, SolarYield result) {
        return new Answer<>(result, result.choices(), SolarYieldCautions.of(brief, result));
    }
}
