package wayside.sizing.brief;

/** What one piece of a load draws while it runs: watts, or amperes at a voltage. */
public sealed interface RunningPower {
    /** So many times as much. */
    RunningPower times(double factor);

    /** @param powerW input power [W], above 0 */
    record Watts(double powerW) implements RunningPower {
        @Override
        public Watts times(double factor) {
            return new Watts(powerW * factor);
        }
    }

    /**
     * @param currentA [A], above 0
     * @param voltageV at which the current was stated [V]
     */
    record Amps(double currentA, double voltageV) implements RunningPower {
        @Override
        public Amps times(double factor) {
            return new Amps(currentA * factor, voltageV);
        }
    }
}
