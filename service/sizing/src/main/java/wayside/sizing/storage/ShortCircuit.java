package wayside.sizing.storage;

import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Expression;
import wayside.sizing.trace.Unit;

/**
 * An estimate of the current that flows when a full bank is shorted at its terminals: {@code I = V / R} with
 * {@code R = R_100 (100 Ah / C) (V / 12 V)}, R_100 [Ohm] the resistance of a bank of 100 Ah at 12 V. Cables and
 * a battery's own switch lower it; neither may be relied on. Common practice, no source: the maker's figure wins.
 */
public final class ShortCircuit {
    private static final Expression CURRENT = Expression.commonPractice("I = V / (R_100 (C_100 / C) (V / V_12))")
            .with("C_100", 100, Unit.AMPERE_HOUR)
            .with("V_12", 12, Unit.VOLT);

    private ShortCircuit() {}

    /** The estimate for a bank [A]. */
    public static Derived currentA(ChemistryData data, Derived bankVoltageV, Derived capacityAh) {
        return CURRENT.value(
                "prospective short-circuit current of the bank",
                Unit.AMPERE,
                bankVoltageV.as("V"),
                capacityAh.as("C"),
                data.internalResistanceOhm().as("R_100"));
    }
}
