package wayside.sizing.system.graph;

import java.util.List;
import java.util.Optional;
import wayside.sizing.wiring.SizedCircuit;

/**
 * A system's parts and the cables between them, battery first, then outward.
 *
 * @param nodes each kind once
 * @param cables each pair of parts once
 * @param acCables those that carry mains
 */
public record SystemGraph(List<Node> nodes, List<Cable> cables, List<AcCable> acCables) {
    public SystemGraph {
        nodes = List.copyOf(nodes);
        cables = List.copyOf(cables);
        acCables = List.copyOf(acCables);
    }

    /** What the cables carry. */
    public List<SizedCircuit> circuits() {
        return cables.stream().map(Cable::circuit).toList();
    }

    /** The cable between two parts. */
    public Optional<Cable> find(NodeKind from, NodeKind to) {
        return cables.stream()
                .filter(cable -> cable.from() == from && cable.to() == to)
                .findFirst();
    }
}
