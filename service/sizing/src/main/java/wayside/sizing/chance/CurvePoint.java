package wayside.sizing.chance;

import java.util.Optional;

/**
 * A bank, an array and a charger on the engine that are just sure enough.
 *
 * @param nominalEnergyWh rated energy of the bank [Wh]
 * @param solarPowerW rated power of the array [W]
 * @param engineChargerA output of the charger on the engine [A]; empty without one
 * @param massKg of batteries, modules, controllers and chargers [kg]
 * @param volumeL of batteries, controllers and chargers [L]
 * @param price of batteries and modules in the customer's own money; 0 without prices
 */
public record CurvePoint(
        double nominalEnergyWh,
        double solarPowerW,
        Optional<Double> engineChargerA,
        double massKg,
        double volumeL,
        double price) {}
