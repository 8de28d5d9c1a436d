package wayside.sizing.chance;

import java.util.List;
import java.util.Optional;
import wayside.sizing.brief.Objective;
import wayside.sizing.endurance.Endurance;
import wayside.sizing.endurance.WhatHelps;
import wayside.sizing.system.SizePair;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Message;

/**
 * What sizing by chance found.
 *
 * @param accepted chance that was asked for
 * @param chance of the system that is recommended, confirmed in all runs of the trip
 * @param coldHours of a usual trip in which charge is on offer and the cold keeps it out [h]
 * @param runs how often the trip was simulated
 * @param seed of the weather
 * @param curve pairs that run flat just rarely enough, by rising array
 * @param objective what the pair was chosen by
 * @param pair that was chosen
 * @param ruleOfThumbChance what the rule of thumb would risk
 * @param whatHelps one change each to the recommended system
 * @param advice the answer
 */
public record ByChance(
        Derived accepted,
        Endurance.Chance chance,
        Derived coldHours,
        Derived runs,
        long seed,
        List<CurvePoint> curve,
        Objective objective,
        SizePair pair,
        Optional<Derived> ruleOfThumbChance,
        List<WhatHelps> whatHelps,
        Message advice) {
    public ByChance {
        curve = List.copyOf(curve);
        whatHelps = List.copyOf(whatHelps);
    }
}
