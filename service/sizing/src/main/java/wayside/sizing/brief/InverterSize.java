package wayside.sizing.brief;

/**
 * An inverter that exists.
 *
 * @param continuousW rated output [W]
 * @param surgeW for a few seconds [W]
 * @param mostTogether equal ones that may work as one
 */
public record InverterSize(
        SizeOrigin origin, double continuousW, double surgeW, int mostTogether, double massKg, Box box)
        implements PartSize {}
