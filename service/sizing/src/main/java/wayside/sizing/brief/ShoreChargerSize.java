package wayside.sizing.brief;

/**
 * A mains charger that exists.
 *
 * @param outputV nominal, of the bus [V]
 * @param currentA rated output [A]
 * @param mostTogether equal ones that may work side by side
 */
public record ShoreChargerSize(
        SizeOrigin origin, double outputV, double currentA, int mostTogether, double massKg, Box box)
        implements PartSize {}
