package wayside.sizing.storage;

import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Formula;
import wayside.sizing.trace.Unit;

/**
 * An estimate of the current that flows when a full bank is shorted at its terminals: {@code I = V / R} with
 * {@code R = R_100 (100 Ah / C) (V / 12 V)}, R_100 [Ohm] the resistance of a bank of 100 Ah at 12 V. Cables and
 * a battery's own switch lower it; neither may be relied on. Common practice, no source: the maker's figure wins.
 */
public final class ShortCircuit {
    private ShortCircuit() {}

    /**
     * @param voltageV of the bank [V]
     * @param capacityAh rated [Ah], above 0
     * @param resistance100Ohm R_100 [Ohm], above 0
     * @return [A]
     */
    public static double currentA(double voltageV, double capacityAh, double resistance100Ohm) {
        return voltageV / (resistance100Ohm * (100 / capacityAh) * (voltageV / 12));
    }

    /** The traced estimate for a bank. */
    public static Derived currentA(ChemistryData data, Derived bankVoltageV, Derived capacityAh) {
        return Derived.computed(
                "prospective short-circuit current of the bank",
                currentA(
                        bankVoltageV.value(),
                        capacityAh.value(),
                        data.internalResistanceOhm().value()),
                Unit.AMPERE,
                Formula.commonPractice("I = V / (R_100 (100 Ah / C) (V / 12 V))"),
                bankVoltageV.as("V"),
                capacityAh.as("C"),
                data.internalResistanceOhm().as("R_100"));
    }
}
