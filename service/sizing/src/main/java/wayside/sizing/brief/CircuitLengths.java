package wayside.sizing.brief;

import java.util.OptionalDouble;

/**
 * One-way lengths of the main circuits, as far as the customer knows them, each above 0 [m].
 *
 * @param at where they were given
 * @param main from the battery to the busbar
 * @param inverter from the busbar to the inverter
 * @param controllerToBattery from the charge controller to the busbar
 * @param arrayToController from the roof to the charge controller
 * @param alternatorCharger from the starter battery to the busbar
 * @param shoreCharger from the shore charger to the busbar
 * @param distribution from the busbar to the fuse box of the DC loads
 */
public record CircuitLengths(
        At at,
        OptionalDouble main,
        OptionalDouble inverter,
        OptionalDouble controllerToBattery,
        OptionalDouble arrayToController,
        OptionalDouble alternatorCharger,
        OptionalDouble shoreCharger,
        OptionalDouble distribution)
        implements Placed {
    /** Nothing is said; it would stand there. */
    public static CircuitLengths open(At at) {
        return new CircuitLengths(
                at,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty());
    }
}
