package wayside.sizing.system;

import wayside.sizing.system.graph.CablePlace;
import wayside.sizing.system.graph.NodeKind;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Expression;
import wayside.sizing.trace.Source;
import wayside.sizing.trace.Unit;
import wayside.sizing.wiring.CircuitDetails;
import wayside.sizing.wiring.CircuitSizing;
import wayside.sizing.wiring.FaultCurrent;

/**
 * A cable with a fuse for each of the batteries side by side: where the rule set asks for it, and where a short of the whole bank
 * is more than any fuse breaks. A fault in one of p equal strings is fed by the others, a fault behind its fuse by itself:
 * {@code I = I_bank max(p - 1, 1) / p}.
 *
 * <p>Source: ABYC E-11, July 2025, 11.10.1.4.1, as quoted: any parallel bank above 500 Ah. How unevenly batteries share is common
 * practice, no source.
 */
final class BatteryLinks {
    static final String NAME = "each battery";
    private static final double LARGE_BANK_AH = 500;
    private static final String RULE_SET = "abyc-e11";
    private static final Expression SHARE = Expression.commonPractice("I = k I_main / p");
    private static final Expression FAULT = Expression.definition("I = I_bank max(p - 1, 1) / p");

    private final BankChoice battery;
    private final FaultCurrent fault;
    private final CircuitDefaults defaults;

    BatteryLinks(BankChoice battery, FaultCurrent fault, CircuitDefaults defaults) {
        this.battery = battery;
        this.fault = fault;
        this.defaults = defaults;
    }

    boolean areNeeded() {
        boolean large = defaults.rules().code().equals(RULE_SET)
                && battery.bank().nominalCapacityAh().value() > LARGE_BANK_AH;
        return battery.buyable().isPresent()
                && battery.buyable().get().parallelCount().value() > 1
                && (large || isBeyondAnyFuse());
    }

    private boolean isBeyondAnyFuse() {
        return fault.estimated()
                && fault.amperes().value() > CircuitSizing.mostBrokenA().value();
    }

    void layIn(GraphBuilder graph, Derived mainA, Derived startA, CircuitVoltage bus) {
        Derived count = battery.buyable().orElseThrow().parallelCount();
        Derived uneven = Derived.convention(
                NAME + ": how unevenly batteries share",
                1.25,
                Unit.COUNT,
                "Those with the shortest cables give more than their part",
                Source.commonPractice());
        Derived length = Derived.convention(
                NAME + ": length, one way",
                0.5,
                Unit.METRE,
                "From a battery to where they meet",
                Source.commonPractice());
        FaultCurrent own = fault.reduced(FAULT.value(
                NAME + ": prospective short-circuit current",
                Unit.AMPERE,
                fault.amperes().as("I_bank"),
                count.as("p")));
        graph.add(
                NodeKind.BATTERY,
                NodeKind.BANK,
                CablePlace.LIVING_SPACE,
                CircuitSizing.of(defaults.losing(NAME, LoadWay.OF_THE_MAIN / 2)
                        .task(NAME, share("current", mainA, uneven, count), length, bus)
                        .fedBy(own.feed())
                        .with(CircuitDetails.NONE
                                .times(count)
                                .starting(share("current, the hardest DC load starting", startA, uneven, count)))));
        graph.count(NodeKind.BATTERY, count);
    }

    private static Derived share(String what, Derived mainA, Derived uneven, Derived count) {
        return SHARE.value(NAME + ": " + what, Unit.AMPERE, mainA.as("I_main"), uneven.as("k"), count.as("p"));
    }
}
