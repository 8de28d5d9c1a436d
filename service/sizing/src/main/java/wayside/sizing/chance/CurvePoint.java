package wayside.sizing.chance;

/**
 * A pair of bank and array that is just sure enough.
 *
 * @param nominalEnergyWh rated energy of the bank [Wh]
 * @param solarPowerW rated power of the array [W]
 * @param massKg of both [kg]
 * @param volumeL of the bank [L]
 * @param price of both in the customer's own money; 0 without prices
 */
public record CurvePoint(double nominalEnergyWh, double solarPowerW, double massKg, double volumeL, double price) {}
