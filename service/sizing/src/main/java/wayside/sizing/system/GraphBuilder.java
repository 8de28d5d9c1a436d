package wayside.sizing.system;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import wayside.sizing.system.graph.AcCable;
import wayside.sizing.system.graph.Cable;
import wayside.sizing.system.graph.CablePlace;
import wayside.sizing.system.graph.Device;
import wayside.sizing.system.graph.Node;
import wayside.sizing.system.graph.NodeKind;
import wayside.sizing.system.graph.SystemGraph;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Expression;
import wayside.sizing.trace.Input;
import wayside.sizing.trace.Unit;
import wayside.sizing.wiring.FaultCurrent;
import wayside.sizing.wiring.SizedCircuit;

/** Gathers a system's cables in the order in which they are laid, and reads its parts off their ends. */
final class GraphBuilder {
    /**
     * What the cables from the bank to a part lose one after the other, each at the current that it carries when everything that
     * may run together runs. Source: the note under NEC 551.73 (2017) adds each serial segment with the load that it sees.
     */
    private static final Expression WAY = Expression.definition("u = sum(u_piece)");

    private final Map<NodeKind, Derived> counts = new EnumMap<>(NodeKind.class);
    private final List<Cable> cables = new ArrayList<>();
    private final List<AcCable> acCables = new ArrayList<>();

    /** A cable whose fault current at its other end nobody knows, or that is no matter there. */
    void add(NodeKind from, NodeKind to, CablePlace place, SizedCircuit circuit, Device... devices) {
        cables.add(new Cable(from, to, place, circuit, List.of(devices), Optional.empty()));
    }

    /**
     * A cable that a battery feeds.
     *
     * @param source of a short at its fuse
     * @return what is left of it at its other end
     */
    FaultCurrent add(
            NodeKind from,
            NodeKind to,
            CablePlace place,
            SizedCircuit circuit,
            FaultCurrent source,
            Device... devices) {
        FaultCurrent end = CableFault.behind(to.code() + ": prospective short-circuit current", source, circuit);
        boolean known = circuit instanceof SizedCircuit.Wired;
        cables.add(new Cable(
                from, to, place, circuit, List.of(devices), known ? Optional.of(end.amperes()) : Optional.empty()));
        return end;
    }

    /** So many of a part alike. */
    void count(NodeKind kind, Derived count) {
        if (count.value() > 1) {
            counts.put(kind, count);
        }
    }

    /** Cables that carry mains. */
    void addAc(List<AcCable> more) {
        acCables.addAll(more);
    }

    SystemGraph graph() {
        Set<NodeKind> ends = EnumSet.noneOf(NodeKind.class);
        cables.forEach(cable -> ends.addAll(List.of(cable.from(), cable.to())));
        acCables.forEach(cable -> ends.addAll(List.of(cable.from(), cable.to())));
        List<Node> nodes = new ArrayList<>();
        for (NodeKind kind : ends) {
            nodes.add(new Node(kind, Optional.ofNullable(counts.get(kind)), drop(kind)));
        }
        return new SystemGraph(nodes, cables, acCables);
    }

    /** Empty where no way leads from the bank, it could not be wired, or a converter gives its own voltage anew. */
    private Optional<Derived> drop(NodeKind kind) {
        List<Input> pieces = new ArrayList<>();
        NodeKind first =
                cables.stream().anyMatch(cable -> cable.from() == NodeKind.BATTERY) ? NodeKind.BATTERY : NodeKind.BANK;
        NodeKind here = kind;
        while (here != first) {
            NodeKind end = here;
            Optional<Cable> cable =
                    cables.stream().filter(one -> one.to() == end).findFirst();
            Optional<Derived> piece = cable.flatMap(Cable::dropPercent);
            if (piece.isEmpty() || cable.get().from() == NodeKind.CONVERTER) {
                return Optional.empty();
            }
            pieces.add(0, piece.get().as("u_piece"));
            here = cable.get().from();
        }
        return pieces.isEmpty()
                ? Optional.empty()
                : Optional.of(WAY.value("voltage drop from battery to " + kind.code(), Unit.PERCENT, pieces));
    }
}
