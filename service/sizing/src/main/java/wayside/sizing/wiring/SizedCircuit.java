package wayside.sizing.wiring;

import java.util.List;
import java.util.Optional;
import wayside.sizing.trace.Caution;

/** What became of a circuit: a conductor and a fuse, or the reason why none of the tables' sizes will do. */
public sealed interface SizedCircuit {
    CircuitDuty duty();

    List<Caution> cautions();

    /**
     * @param conductor of the gauge series
     * @param metric the metric size that does the same; empty when the largest is not enough
     * @param fuse at the source
     * @param governedBy what decided the conductor's size
     */
    record Wired(
            CircuitDuty duty,
            SizedConductor conductor,
            Optional<SizedConductor> metric,
            SizedFuse fuse,
            GovernedBy governedBy,
            List<Caution> cautions)
            implements SizedCircuit {
        public Wired {
            cautions = List.copyOf(cautions);
        }
    }

    /** No conductor or no fuse of the tables will do. */
    record NotFeasible(CircuitDuty duty, CircuitShortfall shortfall, List<Caution> cautions) implements SizedCircuit {
        public NotFeasible {
            cautions = List.copyOf(cautions);
        }
    }
}
