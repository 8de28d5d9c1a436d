package wayside.sizing.brief;

/**
 * A charge controller that exists.
 *
 * @param highestArrayV that it stands [V]
 * @param currentA rated output [A]
 * @param highestBusV nominal, that it charges [V]
 */
public record ControllerSize(
        SizeOrigin origin, double highestArrayV, double currentA, double highestBusV, double massKg, Box box)
        implements PartSize {}
