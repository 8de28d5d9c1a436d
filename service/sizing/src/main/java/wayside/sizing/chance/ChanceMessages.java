package wayside.sizing.chance;

import java.util.List;
import wayside.sizing.endurance.EnduranceMessages;
import wayside.sizing.endurance.WhatHelps;
import wayside.sizing.system.SizePair;
import wayside.sizing.trace.AdviceCode;
import wayside.sizing.trace.Message;

/** A system that was found by chance, as a person would be told it. */
final class ChanceMessages {
    private ChanceMessages() {}

    /** How often it runs flat, what waits meanwhile, whether it lives off the bank, and what helps. */
    static Message advice(SizePair pair, Borne borne, List<WhatHelps> helps) {
        Message advice = EnduranceMessages.advice(
                AdviceCode.RUNS_FLAT_WHEN_OLD,
                pair.nominalEnergyWh().orElseThrow(),
                pair.solarPowerW().orElseThrow(),
                borne.chance().value().value(),
                helps);
        return EnduranceMessages.withWhatIsServed(advice, borne.served(), borne.balance());
    }
}
