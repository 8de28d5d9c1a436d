package wayside.sizing.chance;

import java.util.List;
import java.util.Optional;
import wayside.sizing.endurance.EnduranceMessages;
import wayside.sizing.endurance.WhatHelps;
import wayside.sizing.system.SizePair;
import wayside.sizing.trace.AdviceCode;
import wayside.sizing.trace.Message;
import wayside.sizing.trace.Parameter;

/** A system that was found by chance, as a person would be told it. */
final class ChanceMessages {
    private ChanceMessages() {}

    /** How often it runs flat, what waits meanwhile, whether it lives off the bank, and what helps. */
    static Message advice(SizePair pair, Borne borne, Optional<SmallerSystem> smaller, List<WhatHelps> helps) {
        Message advice = EnduranceMessages.advice(
                AdviceCode.RUNS_FLAT_WHEN_OLD,
                pair.nominalEnergyWh().orElseThrow(),
                pair.solarPowerW().orElseThrow(),
                borne.chance().value().value(),
                helps);
        Message served = EnduranceMessages.withWhatIsServed(advice, borne.served(), borne.balance());
        return smaller.map(system -> withSmaller(served, system)).orElse(served);
    }

    private static Message withSmaller(Message advice, SmallerSystem system) {
        Message told = advice.with(Parameter.number("smallerBattery", system.nominalEnergyWh()))
                .with(Parameter.inner("tripChange", system.changes().get(0).change()));
        return system.solarPowerW().value() > 0
                ? told.with(Parameter.number("smallerPanel", system.solarPowerW()))
                : told;
    }
}
