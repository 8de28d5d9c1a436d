package wayside.sizing.chance;

import java.util.List;
import java.util.Optional;
import wayside.sizing.brief.Objective;
import wayside.sizing.endurance.WhatHelps;
import wayside.sizing.system.SizePair;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Message;
import wayside.sizing.trace.Parameter;

/**
 * What sizing by chance found.
 *
 * @param demands what was asked for
 * @param borne what all runs of the trip say of the system that is recommended
 * @param runs how often the trip was simulated
 * @param seed of the weather
 * @param curve pairs that run flat just rarely enough, by rising array
 * @param objective what the pair was chosen by
 * @param pair that was chosen
 * @param ruleOfThumbChance what the rule of thumb would risk
 * @param whatHelps one change each to the recommended system
 * @param smaller a system that is not enough for the trip as it was asked, and what would make it so
 * @param advice the answer
 */
public record ByChance(
        ChanceDemands demands,
        Borne borne,
        Derived runs,
        long seed,
        List<CurvePoint> curve,
        Objective objective,
        SizePair pair,
        Optional<Derived> ruleOfThumbChance,
        List<WhatHelps> whatHelps,
        Optional<SmallerSystem> smaller,
        Message advice) {
    public ByChance {
        curve = List.copyOf(curve);
        whatHelps = List.copyOf(whatHelps);
    }

    /** The same with something more to tell. */
    public ByChance telling(Parameter more) {
        return new ByChance(
                demands,
                borne,
                runs,
                seed,
                curve,
                objective,
                pair,
                ruleOfThumbChance,
                whatHelps,
                smaller,
                advice.with(more));
    }
}
