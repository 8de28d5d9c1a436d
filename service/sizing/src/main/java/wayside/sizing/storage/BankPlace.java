package wayside.sizing.storage;

import wayside.sizing.brief.BankPlacement;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Expression;
import wayside.sizing.trace.Source;
import wayside.sizing.trace.Unit;

/** Where a bank stands, and how warm it is there. */
public final class BankPlace {
    private static final Expression BANK_C = Expression.definition("T = Tm + dT");
    private static final Expression WARMER = Expression.definition("dT = dT0 + m");

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

    /**
     * A place that is warmer still.
     *
     * @param moreK than the place that was given [K]
     * @return [K]
     */
    public static Derived warmerK(Derived offsetK, double moreK) {
        Derived more = Derived.convention(
                "warmer than the given place by", moreK, Unit.KELVIN, "A change that is tried", Source.definition());
        return WARMER.value(offsetK.label(), Unit.KELVIN, offsetK.as("dT0"), more.as("m"));
    }

    /**
     * Mean temperature of a bank.
     *
     * @param whose opens its label
     * @param airC mean of the air [C]
     * @param offsetK how much warmer than the air it is there [K]
     * @return [C]
     */
    public static Derived meanC(String whose, Derived airC, Derived offsetK) {
        return BANK_C.value(whose + "mean temperature of the bank", Unit.CELSIUS, airC.as("Tm"), offsetK.as("dT"));
    }
}
