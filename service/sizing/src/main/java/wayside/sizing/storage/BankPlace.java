package wayside.sizing.storage;

import wayside.sizing.brief.BankPlacement;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Source;
import wayside.sizing.trace.Unit;

/** Where a bank stands. */
public final class BankPlace {
    private BankPlace() {}

    /**
     * How much warmer than the outside air it is there.
     *
     * @return [K]
     */
    public static Derived offsetK(BankPlacement placement) {
        String label = "bank warmer than the air by";
        return Derived.byDefault(
                        label,
                        0,
                        Unit.KELVIN,
                        placement.at("compartmentOffsetC"),
                        "An unheated compartment; in a heated cabin it is warmer, gives more and may be charged in frost",
                        Source.commonPractice())
                .unlessGiven(placement.offsetK());
    }
}
