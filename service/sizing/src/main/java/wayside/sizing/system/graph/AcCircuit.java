package wayside.sizing.system.graph;

import java.util.Optional;
import wayside.sizing.trace.Derived;

/**
 * A mains circuit.
 *
 * @param name as it is called
 * @param currentA what it carries [A]
 * @param breakerA opens both poles [A]; empty where none of the table is so large
 * @param areaMm2 of its conductors [mm2]
 */
public record AcCircuit(String name, Derived currentA, Optional<Derived> breakerA, Optional<Derived> areaMm2) {}
