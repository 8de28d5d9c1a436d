package wayside.sizing.system;

import wayside.sizing.system.graph.CablePlace;
import wayside.sizing.system.graph.NodeKind;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Expression;
import wayside.sizing.trace.Source;
import wayside.sizing.trace.Unit;
import wayside.sizing.wiring.CircuitDetails;
import wayside.sizing.wiring.CircuitSizing;
import wayside.sizing.wiring.CircuitTask;
import wayside.sizing.wiring.FaultCurrent;
import wayside.sizing.wiring.Feed;

/** The two circuits of a converter: bus to converter at the bus's lowest voltage, converter to fuse box at the loads' own. */
final class ConverterCircuits {
    private static final Expression LOADS = Expression.definition("I = P / V");
    private static final Expression SHORT =
            Expression.commonPractice("I = k c I_each").with("k", 2, Unit.COUNT);
    private static final Expression HIGHEST = Expression.commonPractice("V_high = V 13.8 / 12");

    private final ConverterChoice choice;
    private final CircuitDefaults defaults;

    ConverterCircuits(ConverterChoice choice, CircuitDefaults defaults) {
        this.choice = choice;
        this.defaults = defaults;
    }

    /**
     * @param input bus to converter, by name, current and voltage
     * @param busbar a short at it
     * @param lengthM of the cable to the fuse box [m]
     * @param powerW of all DC loads running [W]
     * @param startW of the hardest starting, all else running [W]
     */
    void layIn(
            GraphBuilder graph,
            CircuitTask input,
            FaultCurrent busbar,
            Derived lengthM,
            Derived powerW,
            Derived startW) {
        graph.add(NodeKind.BUSBAR, NodeKind.CONVERTER, CablePlace.LIVING_SPACE, CircuitSizing.of(input), busbar);
        graph.add(
                NodeKind.CONVERTER,
                NodeKind.DC_LOADS,
                CablePlace.LIVING_SPACE,
                CircuitSizing.of(output(lengthM, powerW, startW)));
        graph.count(NodeKind.CONVERTER, choice.count());
    }

    /** Usual beside the busbar. */
    static Derived inputLengthM() {
        return Derived.convention(
                MainCircuits.CONVERTER_NAME + ": length, one way",
                1,
                Unit.METRE,
                "It stands beside the busbar",
                Source.commonPractice());
    }

    /** A converter limits its own current: a short draws little more than it is rated for. */
    private CircuitTask output(Derived lengthM, Derived powerW, Derived startW) {
        String name = MainCircuits.DISTRIBUTION_NAME;
        Derived volts = choice.converter().loadsVoltageV();
        Derived highest = HIGHEST.value(name + ": highest voltage", Unit.VOLT, volts.as("V"));
        Derived fault = SHORT.value(
                name + ": prospective short-circuit current",
                Unit.AMPERE,
                choice.count().as("c"),
                choice.ratedA().as("I_each"));
        return defaults.losing(name, LoadWay.OF_THE_REST)
                .task(name, current("all DC loads running", powerW, volts), lengthM, new CircuitVoltage(volts, highest))
                .fedBy(new Feed.Node(fault, true))
                .with(CircuitDetails.NONE.starting(current("the hardest DC load starting", startW, volts)));
    }

    private static Derived current(String when, Derived powerW, Derived volts) {
        return LOADS.value(
                MainCircuits.DISTRIBUTION_NAME + ": current, " + when, Unit.AMPERE, powerW.as("P"), volts.as("V"));
    }
}
