package wayside.sizing.endurance;

import java.util.List;
import wayside.sizing.ledger.Outcome;
import wayside.sizing.ledger.WorstRun;
import wayside.sizing.trace.AdviceCode;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Message;
import wayside.sizing.trace.Parameter;
import wayside.sizing.trace.Unit;
import wayside.sizing.trace.WorstRunCode;

/** The answer as a person would be told it. */
public final class EnduranceMessages {
    private static final int HOURS_PER_DAY = 24;

    private EnduranceMessages() {}

    /** How often it runs flat, and the first of the changes, when it helps at all. */
    public static Message advice(
            AdviceCode code, Derived bankWh, Derived solarW, double chance, List<WhatHelps> changes) {
        Message bank =
                Message.of(code, Parameter.number("battery", bankWh), Parameter.number("chance", chance, Unit.SHARE));
        Message advice = solarW.value() > 0 ? bank.with(Parameter.number("panel", solarW)) : bank;
        return changes.stream()
                .filter(WhatHelps::helps)
                .findFirst()
                .map(best -> advice.with(Parameter.inner("change", best.change()))
                        .with(Parameter.number("changedChance", best.chanceOfRunningFlat())))
                .orElse(advice);
    }

    /** With the load that stops most often, and the nights after which a bank that is drawn down day after day is empty. */
    public static Message withWhatIsServed(Message advice, Served served, EnergyBalance balance) {
        Message told = served.worst()
                .map(load -> advice.with(Parameter.text("load", load.load().name()))
                        .with(Parameter.number("servedShare", load.energyShare()))
                        .with(Parameter.number(
                                "fullNights",
                                (double) Math.round(load.fullNights().value()),
                                Unit.COUNT))
                        .with(Parameter.number("nights", served.nights(), Unit.COUNT)))
                .orElse(advice);
        return balance.emptyAfterNights()
                .map(nights -> told.with(Parameter.number("drainedNights", Math.floor(nights.value()), Unit.DAY)))
                .orElse(told);
    }

    static Message worst(Outcome outcome) {
        Message worst = outcome.worst().firstFlatHour() < 0 ? lasted(outcome) : ranFlat(outcome);
        double usualWh = outcome.solarWh();
        double solarWh = outcome.worst().solarWh();
        return usualWh > 0
                ? worst.with(Parameter.number("sun", solarWh, Unit.WATT_HOUR))
                        .with(Parameter.number("sunShare", solarWh / usualWh, Unit.SHARE))
                : worst;
    }

    private static Message lasted(Outcome outcome) {
        return Message.of(
                WorstRunCode.LASTED,
                Parameter.number("runs", outcome.runs(), Unit.COUNT),
                Parameter.number("lowest", outcome.worst().lowestShare(), Unit.SHARE));
    }

    private static Message ranFlat(Outcome outcome) {
        WorstRun worst = outcome.worst();
        return Message.of(
                WorstRunCode.RAN_FLAT,
                Parameter.number("runs", outcome.runs(), Unit.COUNT),
                Parameter.number("day", worst.firstFlatHour() / HOURS_PER_DAY + 1, Unit.COUNT),
                Parameter.number("hour", worst.firstFlatHour() % HOURS_PER_DAY, Unit.COUNT),
                Parameter.number("shortHours", worst.flatHours(), Unit.HOUR),
                Parameter.number("unmet", worst.unmetWh(), Unit.WATT_HOUR));
    }
}
