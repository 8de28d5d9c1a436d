package wayside.sizing.system.graph;

import java.util.List;
import java.util.Optional;
import wayside.sizing.trace.Derived;
import wayside.sizing.wiring.SizedCircuit;

/**
 * A cable between two parts.
 *
 * @param from the part that feeds a fault in it: its fuse sits there
 * @param to the other end
 * @param circuit its own current, voltage, length, drop, conductor and fuse
 * @param devices in it besides the fuse
 * @param endFaultA that a short at its other end draws through it, where that is known [A]
 */
public record Cable(
        NodeKind from,
        NodeKind to,
        CablePlace place,
        SizedCircuit circuit,
        List<Device> devices,
        Optional<Derived> endFaultA) {
    public Cable {
        devices = List.copyOf(devices);
    }

    /** No two cables join the same parts. */
    public String id() {
        return from.code() + "-to-" + to.code();
    }

    /** Its voltage drop, where it could be wired [%]. */
    public Optional<Derived> dropPercent() {
        return circuit instanceof SizedCircuit.Wired wired
                ? Optional.of(wired.conductor().voltageDropPercent())
                : Optional.empty();
    }
}
