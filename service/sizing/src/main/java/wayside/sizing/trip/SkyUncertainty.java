package wayside.sizing.trip;

import java.util.OptionalDouble;
import wayside.sizing.solar.SkyBasis;
import wayside.sizing.solar.SkyMonth;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Formula;
import wayside.sizing.trace.Source;
import wayside.sizing.trace.Unit;

/**
 * How far a run's sky may lie from the expected one: the year's own scatter, spells longer than the days' chain has, and what
 * the table doesn't know. With these the predicted chances come true in real typical years.
 */
public final class SkyUncertainty {
    private static final double GIVEN = 0.12;
    private static final double WORLD = 0.16;
    /** From the middle to the end that one in ten lies beyond, of a normal distribution. */
    private static final double TENTH = 1.2816;

    private static final Source CHECKED = Source.dataset(
            "Daily clearness of typical years, NREL TMY3 2008", "chosen so that predicted chances come true");

    private SkyUncertainty() {}

    public static Derived of(String label, OptionalDouble given, SkyMonth sky) {
        String field = "/skyUncertainty";
        String what = label + ": uncertainty of the sky";
        if (given.isPresent()) {
            return Derived.given(what, given.getAsDouble(), Unit.SHARE, field);
        }
        if (sky.basis() == SkyBasis.GIVEN) {
            return Derived.assumed(
                    what, GIVEN, Unit.SHARE, field, "Your figure is a mean; single years differ from it", CHECKED);
        }
        Derived table = Derived.assumed(
                what,
                WORLD,
                Unit.SHARE,
                field,
                "Single years differ, and the table is a tenth off here and there",
                CHECKED);
        return sky.basis() == SkyBasis.WORLD || sky.horizontalKwhM2().value() <= 0 ? table : ofLatitude(what, sky);
    }

    private static Derived ofLatitude(String what, SkyMonth sky) {
        double range = sky.highKwhM2().value() - sky.lowKwhM2().value();
        return Derived.computed(
                what,
                Math.max(WORLD, range / (2 * TENTH * sky.horizontalKwhM2().value())),
                Unit.SHARE,
                Formula.commonPractice("s = (H_high - H_low) / (2 1.2816 H), at least 0.16"),
                sky.highKwhM2().as("H_high"),
                sky.lowKwhM2().as("H_low"),
                sky.horizontalKwhM2().as("H"));
    }
}
