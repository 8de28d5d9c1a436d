package wayside.sizing.brief;

/**
 * The share of the time that a fridge's compressor runs at an ambient temperature.
 *
 * @param ambientC [C]
 * @param dutyCycle [share], 0 to 1
 */
public record DutyPoint(double ambientC, double dutyCycle) {}
