package wayside.sizing.brief;

/** What a circuit carries: amperes, or watts at the circuit's voltage. */
public sealed interface CircuitCurrent {
    /** @param currentA [A], above 0 */
    record Amps(double currentA) implements CircuitCurrent {}

    /** @param powerW [W], above 0 */
    record Watts(double powerW) implements CircuitCurrent {}
}
