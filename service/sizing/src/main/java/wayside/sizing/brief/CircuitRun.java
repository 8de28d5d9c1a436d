package wayside.sizing.brief;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * A cable to size.
 *
 * @param name as the customer calls it
 * @param current what it carries
 * @param continuous whether it carries that for three hours or more
 * @param lengthM one way [m], above 0
 * @param voltageV nominal [V]; 12 if absent
 * @param voltageDropLimitPercent of the nominal voltage, both ways [%]; by the rule set's class if absent
 * @param insulationC temperature class of the insulation [C]
 * @param ambientC around the cable [C]
 * @param bundledConductors current-carrying conductors that run together, this pair included
 * @param engineSpace whether it runs through the engine space
 * @param rules code of the rule set; the default set if absent
 */
public record CircuitRun(
        String name,
        CircuitCurrent current,
        boolean continuous,
        double lengthM,
        OptionalDouble voltageV,
        OptionalDouble voltageDropLimitPercent,
        OptionalDouble insulationC,
        OptionalDouble ambientC,
        OptionalInt bundledConductors,
        boolean engineSpace,
        Optional<String> rules) {
    public static CircuitRun of(String name, double currentA, double lengthM) {
        return new CircuitRun(
                name,
                new CircuitCurrent.Amps(currentA),
                false,
                lengthM,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalInt.empty(),
                false,
                Optional.empty());
    }
}
