package wayside.sizing.charging;

import wayside.sizing.brief.Mains;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Expression;
import wayside.sizing.trace.Source;
import wayside.sizing.trace.Unit;

/**
 * What a hookup gives. Usual figures are those of most European sites, 230 V and 10 A, and of 120 V sites for recreational
 * vehicles in the United States, 30 A (NFPA 70, 551.73, 3,600 VA).
 */
public final class HookupLimit {
    private static final double EUROPE_V = 230;
    private static final double EUROPE_A = 10;
    private static final double AMERICA_A = 30;
    private static final Expression POWER = Expression.definition("P = V I");

    private HookupLimit() {}

    /** What a hookup gives [W]. */
    public static Derived powerW(Mains mains) {
        return POWER.value(
                "hookup: power that it gives",
                Unit.WATT,
                voltageV(mains).as("V"),
                limitA(mains).as("I"));
    }

    public static Derived voltageV(Mains mains) {
        return Derived.byDefault(
                        "hookup: voltage",
                        EUROPE_V,
                        Unit.VOLT,
                        mains.at("voltageV"),
                        "What most sites outside the Americas and Japan have; 120 V there",
                        Source.commonPractice())
                .unlessGiven(mains.voltageV());
    }

    public static Derived limitA(Mains mains) {
        boolean america = voltageV(mains).value() < EUROPE_V;
        return Derived.byDefault(
                        "hookup: what its breaker lets through",
                        america ? AMERICA_A : EUROPE_A,
                        Unit.AMPERE,
                        mains.at("hookupLimitA"),
                        america
                                ? "A 30 A site; others have 15, 20 or 50 A"
                                : "The norm of European sites; 6 and 16 A are common too, 3 A exists",
                        Source.commonPractice())
                .unlessGiven(mains.hookupLimitA());
    }
}
