package wayside.sizing.brief;

import java.util.OptionalDouble;

/**
 * What the request says of the inverter; each figure may be left open.
 *
 * @param at where it was given
 * @param continuousW rated output [W]
 * @param surgeW short-time output [W]
 * @param idleW drawn from the battery while on without load [W]
 * @param efficiency flat efficiency [share], above 0 up to 1; replaces the loss curve
 * @param hoursPerDay switched on [h]; 24 if absent
 */
public record InverterSpec(
        At at,
        OptionalDouble continuousW,
        OptionalDouble surgeW,
        OptionalDouble idleW,
        OptionalDouble efficiency,
        OptionalDouble hoursPerDay)
        implements Placed {
    public static final InverterSpec OPEN = open(At.ROOT);

    /** Nothing is said; it would stand there. */
    public static InverterSpec open(At at) {
        return new InverterSpec(
                at,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty());
    }

    public InverterSpec withEfficiency(double share) {
        return new InverterSpec(at, continuousW, surgeW, idleW, OptionalDouble.of(share), hoursPerDay);
    }

    public InverterSpec withIdle(double newIdleW) {
        return new InverterSpec(at, continuousW, surgeW, OptionalDouble.of(newIdleW), efficiency, hoursPerDay);
    }

    public InverterSpec onFor(double newHoursPerDay) {
        return new InverterSpec(at, continuousW, surgeW, idleW, efficiency, OptionalDouble.of(newHoursPerDay));
    }
}
