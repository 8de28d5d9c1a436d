package wayside.sizing.wiring;

import java.util.List;
import wayside.sizing.trace.Assumption;
import wayside.sizing.trace.Derived;

/**
 * What a circuit must stand, with every default filled in.
 *
 * @param name as the customer calls it
 * @param rules the rule set in force
 * @param currentA what it carries [A]
 * @param designCurrentA what its fuse must carry all day [A]
 * @param lengthM one way [m]
 * @param roundTripM out and back [m]
 * @param voltageV nominal [V]
 * @param highestVoltageV that it reaches [V]
 * @param voltageDropLimitPercent of the nominal voltage [%]
 * @param surroundings of its conductors
 * @param interruptA the current that its fuse must break [A]
 * @param feed what stands behind its fuse
 * @param details what only some circuits have
 * @param choices defaults that are not numbers
 */
public record CircuitDuty(
        String name,
        RuleSet rules,
        Derived currentA,
        Derived designCurrentA,
        Derived lengthM,
        Derived roundTripM,
        Derived voltageV,
        Derived highestVoltageV,
        Derived voltageDropLimitPercent,
        Surroundings surroundings,
        Derived interruptA,
        Feed feed,
        CircuitDetails details,
        List<Assumption> choices) {
    public CircuitDuty {
        choices = List.copyOf(choices);
    }

    /** A label of this circuit: {@code fridge: design current}. */
    String label(String what) {
        return name + ": " + what;
    }
}
