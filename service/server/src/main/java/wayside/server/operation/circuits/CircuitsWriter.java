package wayside.server.operation.circuits;

import java.util.ArrayList;
import java.util.List;
import wayside.server.answer.Figures;
import wayside.server.answer.Tail;
import wayside.sizing.trace.Answer;
import wayside.sizing.wiring.SizedCircuit;

/** The answer about circuits. */
public final class CircuitsWriter {
    private CircuitsWriter() {}

    public static CircuitsResponse write(Answer<List<SizedCircuit>> answer, Figures figures) {
        List<CircuitView> circuits = write(answer.result(), figures.in("circuits"));
        Tail tail = Tail.of(answer, figures);
        return new CircuitsResponse(circuits, tail.assumptions(), tail.cautions(), tail.engine(), tail.derivation());
    }

    /**
     * Circuits as a part of an answer.
     *
     * @param figures those of the place where the list stands
     */
    public static List<CircuitView> write(List<SizedCircuit> circuits, Figures figures) {
        List<CircuitView> views = new ArrayList<>();
        for (SizedCircuit circuit : circuits) {
            views.add(new CircuitWriter(figures.entry(views.size())).write(circuit));
        }
        return views;
    }
}
