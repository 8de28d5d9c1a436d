package wayside.sizing.demand;

import wayside.sizing.brief.Load;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Expression;
import wayside.sizing.trace.Unit;

/**
 * One load, in figures.
 *
 * @param load as it was asked
 * @param powerOfOneW of one piece while it runs [W]
 * @param runningPowerW of all its pieces together while they run [W]
 * @param dailyEnergyWh at its plug [Wh]
 * @param extraSurgeW what the start of one piece adds above its running power [W]
 * @param onlyAtAHookup whether it runs nowhere on the trip but straight off a hookup
 */
public record LoadDemand(
        Load load,
        Derived powerOfOneW,
        Derived runningPowerW,
        Derived dailyEnergyWh,
        Derived extraSurgeW,
        boolean onlyAtAHookup) {
    private static final Expression START = Expression.definition("S1 = P1 + Ps");

    public boolean isBehindTheInverter() {
        return load.isAc() && !onlyAtAHookup;
    }

    /** What one piece draws for a moment when it starts [W]. */
    public Derived startOfOneW() {
        return START.value("start of one " + load.name(), Unit.WATT, powerOfOneW.as("P1"), extraSurgeW.as("Ps"));
    }
}
