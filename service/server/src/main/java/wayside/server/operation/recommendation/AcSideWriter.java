package wayside.server.operation.recommendation;

import java.util.ArrayList;
import java.util.List;
import wayside.server.answer.Figures;
import wayside.sizing.system.AcSide;
import wayside.sizing.system.graph.AcCable;
import wayside.sizing.system.graph.AcCircuit;
import wayside.sizing.system.graph.NodeKind;

/** The mains side of a recommendation. */
final class AcSideWriter {
    private AcSideWriter() {}

    static AcSideView write(AcSide ac, Figures figures) {
        return new AcSideView(
                figures.at("voltageV", ac.voltageV()),
                ac.isEurope() ? "rcd" : "gfci",
                figures.at("residualCurrentA", ac.residualA()),
                false,
                ac.cables().stream().anyMatch(cable -> cable.from() == NodeKind.INVERTER),
                ac.inlet().map(inlet -> inlet(inlet, figures.in("inlet"))).orElse(null),
                circuits(ac, figures.in("circuits")));
    }

    private static InletView inlet(AcSide.Inlet inlet, Figures figures) {
        return new InletView(
                figures.at("ratingA", inlet.ratingA()),
                figures.at("leadAreaMm2", inlet.leadMm2()),
                figures.at("longestLeadM", inlet.longestLeadM()));
    }

    private static List<AcCircuitView> circuits(AcSide ac, Figures figures) {
        List<AcCircuitView> views = new ArrayList<>();
        for (AcCable cable : ac.cables()) {
            views.add(circuit(cable.circuit(), figures.entry(views.size())));
        }
        return views;
    }

    private static AcCircuitView circuit(AcCircuit circuit, Figures figures) {
        return new AcCircuitView(
                circuit.name(),
                figures.at("currentA", circuit.currentA()),
                circuit.breakerA()
                        .map(breaker -> figures.at("breakerA", breaker))
                        .orElse(null),
                circuit.areaMm2().map(area -> figures.at("areaMm2", area)).orElse(null));
    }
}
