package wayside.sizing.brief;

/**
 * A charger between alternator and bank that exists.
 *
 * @param inputV nominal, of the vehicle [V]
 * @param outputV nominal, of the bus [V]
 * @param currentA rated output [A]
 * @param mostTogether equal ones that may work side by side
 */
public record AlternatorChargerSize(
        SizeOrigin origin, double inputV, double outputV, double currentA, int mostTogether, double massKg, Box box)
        implements PartSize {}
