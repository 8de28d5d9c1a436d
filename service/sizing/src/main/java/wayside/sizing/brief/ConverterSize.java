package wayside.sizing.brief;

/**
 * A converter that exists, from the bus to loads of a lower voltage.
 *
 * @param inputV nominal [V]
 * @param outputV nominal [V]
 * @param currentA rated output [A]
 */
public record ConverterSize(SizeOrigin origin, double inputV, double outputV, double currentA, double massKg, Box box)
        implements PartSize {}
