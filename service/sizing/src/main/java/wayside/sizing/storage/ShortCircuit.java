package wayside.sizing.storage;

import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Expression;
import wayside.sizing.trace.Source;
import wayside.sizing.trace.Unit;

/**
 * An estimate of the current that flows when a full bank is shorted behind its main fuse: {@code I = V / (R + j R_j)} with
 * {@code R = R_100 (100 Ah / C) (V / 12 V)}, R_100 [Ohm] the resistance of a bank of 100 Ah at 12 V, j joints of R_j
 * [Ohm]. A battery's own electronics may open first; that is not relied on. Common practice, no source: the maker's figure
 * wins.
 */
public final class ShortCircuit {
    private static final double JOINT_OHM = 0.00005;
    private static final double JOINTS_AT_THE_BANK = 4;

    private static final Expression CURRENT = Expression.commonPractice(
                    "I = V / (R_100 (C_100 / C) (V / V_12) + j R_j)")
            .with("C_100", 100, Unit.AMPERE_HOUR)
            .with("V_12", 12, Unit.VOLT);

    private ShortCircuit() {}

    /** The estimate for a bank [A]. */
    public static Derived currentA(String label, ChemistryData data, Derived bankVoltageV, Derived capacityAh) {
        Derived joints = Derived.convention(
                "bank: bolted joints in a short behind its main fuse",
                JOINTS_AT_THE_BANK,
                Unit.COUNT,
                "Both posts and both ends of the main fuse",
                Source.commonPractice());
        return CURRENT.value(
                label,
                Unit.AMPERE,
                bankVoltageV.as("V"),
                capacityAh.as("C"),
                data.internalResistanceOhm().as("R_100"),
                joints.as("j"),
                jointOhm().as("R_j"));
    }

    /** Of one crimped lug or bolted joint [Ohm]. */
    public static Derived jointOhm() {
        return Derived.convention(
                "joint: resistance",
                JOINT_OHM,
                Unit.OHM,
                "The low end of 0.05 to 0.2 mOhm, from memory, so that the current is not flattered",
                Source.commonPractice());
    }
}
