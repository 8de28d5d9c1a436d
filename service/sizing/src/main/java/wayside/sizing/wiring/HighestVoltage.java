package wayside.sizing.wiring;

import java.util.ArrayList;
import java.util.List;
import wayside.sizing.brief.Chemistry;
import wayside.sizing.storage.BankVoltage;
import wayside.sizing.storage.ChemistryData;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Expression;
import wayside.sizing.trace.Input;
import wayside.sizing.trace.Unit;

/**
 * The highest voltage that a circuit reaches [V]: what its bank is charged or equalised with, not the nominal voltage. A
 * fuse must be rated for it.
 */
public final class HighestVoltage {
    private static final Expression WORST = Expression.definition("V_max = max(V)");

    private HighestVoltage() {}

    /**
     * On a bank of a known chemistry.
     *
     * @param name of the circuit
     */
    public static Derived ofBank(String name, Chemistry chemistry, Derived voltageV) {
        return BankVoltage.highestV(name + ": highest voltage", ChemistryData.of(chemistry), voltageV);
    }

    /**
     * On a bank that nothing is known of: the worst of the chemistries.
     *
     * @param name of the circuit
     */
    public static Derived ofAnyBank(String name, Derived voltageV) {
        List<Input> each = new ArrayList<>();
        for (Chemistry chemistry : Chemistry.values()) {
            each.add(BankVoltage.highestV(
                            name + ": highest voltage with " + chemistry.code(), ChemistryData.of(chemistry), voltageV)
                    .as("V"));
        }
        return WORST.value(name + ": highest voltage", Unit.VOLT, each);
    }
}
