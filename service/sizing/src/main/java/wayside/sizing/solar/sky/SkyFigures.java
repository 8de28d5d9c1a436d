package wayside.sizing.solar.sky;

import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Expression;
import wayside.sizing.trace.Source;
import wayside.sizing.trace.Unit;

/** A month's sunshine: clearness, its spread, the irradiation it makes and the range it may lie in. */
record SkyFigures(
        SkyBasis basis,
        Derived clearness,
        Derived spread,
        Derived horizontalKwhM2,
        Derived lowKwhM2,
        Derived highKwhM2) {
    static final Source CLEARNESS_INDEX =
            Source.handbook("Duffie & Beckman, Solar Engineering of Thermal Processes, 5th ed.", "section 2.9");

    private static final Expression IRRADIATION = Expression.of("H = KT H_0", CLEARNESS_INDEX);

    /** {@code H = KT H_0}. */
    static Derived irradiation(String label, Derived clearness, Derived h0) {
        return IRRADIATION.value(label, Unit.KILOWATT_HOUR_PER_SQUARE_METRE, clearness.as("KT"), h0.as("H_0"));
    }
}
