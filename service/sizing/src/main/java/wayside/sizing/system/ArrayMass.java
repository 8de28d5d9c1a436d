package wayside.sizing.system;

import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Source;
import wayside.sizing.trace.Unit;

/** Mass of panels of which only the power is known. */
public final class ArrayMass {
    private ArrayMass() {}

    /** Common practice, no source. */
    public static Derived kgPerW() {
        return Derived.convention(
                "mass of a watt of panel",
                0.07,
                Unit.COUNT,
                "kg for each W: framed modules of 100 W weigh 6 to 8 kg with brackets",
                Source.commonPractice());
    }
}
