package wayside.sizing.system.graph;

/**
 * A device in a cable.
 *
 * @param at the end of the cable that it sits at
 */
public record Device(DeviceKind kind, NodeKind at) {}
