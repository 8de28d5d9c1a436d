package wayside.sizing.demand;

import wayside.sizing.brief.Load;
import wayside.sizing.trace.Derived;

/**
 * One load, in figures.
 *
 * @param load as it was asked
 * @param runningPowerW of all its pieces together while they run [W]
 * @param dailyEnergyWh at its plug [Wh]
 * @param extraSurgeW what the start of one piece adds above its running power [W]
 */
public record LoadDemand(Load load, Derived runningPowerW, Derived dailyEnergyWh, Derived extraSurgeW) {
    /** Running power of one piece [W]. */
    public double powerOfOneW() {
        return runningPowerW.value() / load.count();
    }

    /** What one piece draws for a moment when it starts [W]. */
    public double startOfOneW() {
        return powerOfOneW() + extraSurgeW.value();
    }
}
