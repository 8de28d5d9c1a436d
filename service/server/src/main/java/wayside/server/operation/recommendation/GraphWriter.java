package wayside.server.operation.recommendation;

import java.util.ArrayList;
import java.util.List;
import wayside.server.answer.Figures;
import wayside.sizing.system.graph.AcCable;
import wayside.sizing.system.graph.Cable;
import wayside.sizing.system.graph.CablePlace;
import wayside.sizing.system.graph.Device;
import wayside.sizing.system.graph.Node;
import wayside.sizing.system.graph.SystemGraph;

/** The parts of a system and the cables between them. */
final class GraphWriter {
    private GraphWriter() {}

    static GraphView write(SystemGraph graph, Figures figures) {
        List<NodeView> nodes = new ArrayList<>();
        for (Node node : graph.nodes()) {
            nodes.add(node(node, figures.in("nodes").entry(nodes.size())));
        }
        List<CableView> cables = new ArrayList<>();
        for (Cable cable : graph.cables()) {
            cables.add(cable(cable, figures.in("cables").entry(cables.size())));
        }
        graph.acCables().forEach(cable -> cables.add(ac(cable)));
        return new GraphView(nodes, cables);
    }

    private static NodeView node(Node node, Figures figures) {
        return new NodeView(
                node.kind().code(),
                node.count().map(count -> (int) figures.at("count", count)).orElse(null),
                node.dropPercent()
                        .map(drop -> figures.at("voltageDropPercent", drop))
                        .orElse(null));
    }

    private static CableView ac(AcCable cable) {
        return new CableView(
                cable.id(),
                cable.from().code(),
                cable.to().code(),
                cable.circuit().name(),
                CablePlace.LIVING_SPACE.code(),
                devices(cable.devices()),
                null);
    }

    private static List<DeviceView> devices(List<Device> devices) {
        return devices.stream()
                .map(device -> new DeviceView(device.kind().code(), device.at().code()))
                .toList();
    }

    private static CableView cable(Cable cable, Figures figures) {
        return new CableView(
                cable.id(),
                cable.from().code(),
                cable.to().code(),
                cable.circuit().duty().name(),
                cable.place().code(),
                devices(cable.devices()),
                cable.endFaultA()
                        .map(current -> figures.at("endFaultA", current))
                        .orElse(null));
    }
}
