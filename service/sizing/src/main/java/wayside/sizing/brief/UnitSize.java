package wayside.sizing.brief;

/**
 * A self-contained unit that exists: battery, inverter, charger and outlets in one case.
 *
 * @param energyWh rated [Wh]
 * @param inverterW continuous [W]
 * @param surgeW for a few seconds [W]
 * @param solarW the largest array that it takes [W]
 */
public record UnitSize(
        SizeOrigin origin, double energyWh, double inverterW, double surgeW, double solarW, double massKg, Box box)
        implements PartSize {}
