package wayside.sizing.storage;

import java.util.OptionalDouble;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Source;
import wayside.sizing.trace.Unit;

/** Where a bank stands. */
public final class BankPlace {
    private BankPlace() {}

    /**
     * How much warmer than the outside air it is there.
     *
     * @param given [K]; outside air if absent
     * @return [K]
     */
    public static Derived offsetK(OptionalDouble given) {
        String label = "bank warmer than the air by";
        String field = "/compartmentOffsetC";
        return Derived.assumed(
                        label,
                        0,
                        Unit.KELVIN,
                        field,
                        "An unheated compartment; in a heated cabin it is warmer, gives more and may be charged in frost",
                        Source.commonPractice())
                .unlessGiven(given);
    }
}
