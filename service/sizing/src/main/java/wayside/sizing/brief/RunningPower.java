package wayside.sizing.brief;

/** What one piece of a load draws while it runs: watts, or amperes at a voltage. */
public sealed interface RunningPower {
    /** @param powerW input power [W], above 0 */
    record Watts(double powerW) implements RunningPower {}

    /**
     * @param currentA [A], above 0
     * @param voltageV at which the current was stated [V]
     */
    record Amps(double currentA, double voltageV) implements RunningPower {}
}
