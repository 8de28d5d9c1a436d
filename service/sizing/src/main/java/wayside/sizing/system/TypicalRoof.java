package wayside.sizing.system;

import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Expression;
import wayside.sizing.trace.Source;
import wayside.sizing.trace.Unit;

/** The room for panels on a roof, where nobody measured one. Common practice, no source. */
public final class TypicalRoof {
    /** Free of vents and rails [m2]. */
    public static final double AREA_M2 = 6;

    private static final Expression FULL_ROOF = Expression.definition("P = A p");

    private TypicalRoof() {}

    /** Rated power of the panels that it has room for [W]. */
    static Derived fullPowerW() {
        Derived roof = Derived.convention(
                "free roof of a van",
                AREA_M2,
                Unit.SQUARE_METRE,
                "Between vents and rails a long van leaves about so much",
                Source.commonPractice());
        Derived density = TypicalModule.powerPerArea();
        return FULL_ROOF.value("rated power of a full roof", Unit.WATT, roof.as("A"), density.as("p"));
    }
}
