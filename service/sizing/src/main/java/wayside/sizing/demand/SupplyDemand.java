package wayside.sizing.demand;

import wayside.sizing.trace.Derived;

/**
 * All loads of one supply together.
 *
 * @param dailyEnergyWh at their plugs [Wh]
 * @param peakPowerW if all run at once [W]
 * @param surgePowerW if all run at once and the hardest starts [W]
 */
public record SupplyDemand(Derived dailyEnergyWh, Derived peakPowerW, Derived surgePowerW) {}
