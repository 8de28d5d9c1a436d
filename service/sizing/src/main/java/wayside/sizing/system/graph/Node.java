package wayside.sizing.system.graph;

import java.util.Optional;
import wayside.sizing.trace.Derived;

/**
 * A part of a system.
 *
 * @param count of parts alike, where there are several
 * @param dropPercent what the cables from the bank to it lose one after the other, where the way could be wired [%]
 */
public record Node(NodeKind kind, Optional<Derived> count, Optional<Derived> dropPercent) {}
