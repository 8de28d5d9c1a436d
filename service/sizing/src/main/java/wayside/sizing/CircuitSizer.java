package wayside.sizing;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import wayside.sizing.brief.CircuitRun;
import wayside.sizing.trace.Answer;
import wayside.sizing.trace.Assumption;
import wayside.sizing.trace.Caution;
import wayside.sizing.wiring.CircuitReading;
import wayside.sizing.wiring.CircuitSizing;
import wayside.sizing.wiring.SizedCircuit;

/** Conductors and fuses: from what each circuit carries, and how far, to what to buy. */
public final class CircuitSizer {
    private CircuitSizer() {}

    /**
     * Sizes each circuit by itself.
     *
     * @param runs in the order of the request; their length is one way
     * @throws IllegalArgumentException for an unknown rule set or insulation below 60 C, which a reader of requests
     *     refuses first
     */
    public static Answer<List<SizedCircuit>> size(List<CircuitRun> runs) {
        List<SizedCircuit> circuits = new ArrayList<>();
        for (CircuitRun run : runs) {
            circuits.add(of(run));
        }
        Set<Assumption> choices = new LinkedHashSet<>();
        Set<Caution> cautions = new LinkedHashSet<>();
        for (SizedCircuit circuit : circuits) {
            choices.addAll(circuit.duty().choices());
            cautions.addAll(circuit.cautions());
        }
        return new Answer<>(List.copyOf(circuits), List.copyOf(choices), List.copyOf(cautions));
    }

    /**
     * One circuit as a request states it. A circuit of figures that were worked out goes through
     * {@link CircuitSizing#of} with a {@link wayside.sizing.wiring.CircuitTask}.
     */
    static SizedCircuit of(CircuitRun run) {
        return CircuitSizing.of(CircuitReading.of(run));
    }
}
