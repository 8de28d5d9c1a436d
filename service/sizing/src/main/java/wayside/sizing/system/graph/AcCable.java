package wayside.sizing.system.graph;

import java.util.List;

/**
 * A mains cable between two parts.
 *
 * @param from its source
 * @param to the other end
 * @param circuit its own current, breaker and conductors
 * @param devices in it
 */
public record AcCable(NodeKind from, NodeKind to, AcCircuit circuit, List<Device> devices) {
    public AcCable {
        devices = List.copyOf(devices);
    }

    /** No two cables join the same parts. */
    public String id() {
        return from.code() + "-to-" + to.code();
    }
}
