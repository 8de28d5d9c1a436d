package wayside.sizing.system;

import java.util.ArrayList;
import java.util.List;
import wayside.sizing.system.graph.Node;
import wayside.sizing.system.graph.NodeKind;
import wayside.sizing.system.graph.SystemGraph;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Expression;
import wayside.sizing.trace.Source;
import wayside.sizing.trace.Unit;

/**
 * The way from the bank to a load: what its cables lose one after the other, each at the current that it carries when everything
 * that may run together runs. Source: the note under NEC 551.73 (2017) adds each serial segment with the load that it sees. That the
 * whole way keeps the limit that the rule sets give for one circuit is a rule of this house, stricter than theirs.
 *
 * @param dropPercent of the nominal voltage, all cables of it [%]
 * @param limitPercent of the whole way [%]
 */
public record LoadWay(Derived dropPercent, Derived limitPercent) {
    /** What each cable of a way may lose of its limit. Common practice, no source. */
    static final double OF_THE_MAIN = 1.0 / 3;

    static final double OF_THE_REST = 2.0 / 3;
    static final double OF_THE_DISTRIBUTION = 1.0 / 3;

    private static final Expression WITH_ITS_OWN = Expression.definition("u = u_way + u_all s");

    /** Those to the inverter and to the DC loads, as far as their cables could be sized; a converter gives its own voltage anew. */
    static List<LoadWay> all(SystemGraph graph, Derived limitPercent) {
        List<LoadWay> ways = new ArrayList<>();
        for (Node node : graph.nodes()) {
            boolean ends = node.kind() == NodeKind.INVERTER
                    || node.kind() == NodeKind.CONVERTER
                    || node.kind() == NodeKind.DC_LOADS;
            node.dropPercent()
                    .filter(drop -> ends)
                    .map(drop -> node.kind() == NodeKind.DC_LOADS ? withItsOwn(drop, limitPercent) : drop)
                    .ifPresent(drop -> ways.add(new LoadWay(drop, limitPercent)));
        }
        return ways;
    }

    private static Derived withItsOwn(Derived wayPercent, Derived limitPercent) {
        return WITH_ITS_OWN.value(
                "voltage drop from battery to a DC load",
                Unit.PERCENT,
                wayPercent.as("u_way"),
                limitPercent.as("u_all"),
                left().as("s"));
    }

    private static Derived left() {
        return Derived.convention(
                "part of the voltage drop limit that is left for each load's own cable",
                1 - OF_THE_MAIN - OF_THE_DISTRIBUTION,
                Unit.SHARE,
                "From the fuse box to the load",
                Source.commonPractice());
    }
}
