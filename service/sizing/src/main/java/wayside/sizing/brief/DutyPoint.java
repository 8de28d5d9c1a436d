package wayside.sizing.brief;

/**
 * The share of the time that a fridge's compressor runs at an ambient temperature.
 *
 * @param at where it was given
 * @param ambientC [C]
 * @param dutyCycle [share], 0 to 1
 */
public record DutyPoint(At at, double ambientC, double dutyCycle) implements Placed {
    public DutyPoint(double ambientC, double dutyCycle) {
        this(At.ROOT, ambientC, dutyCycle);
    }
}
