package wayside.server.operation.circuits;

import org.jspecify.annotations.Nullable;
import wayside.server.answer.Figures;
import wayside.server.answer.MessageView;
import wayside.server.answer.MessageWriter;
import wayside.server.answer.ShortfallView;
import wayside.server.answer.ShortfallWriter;
import wayside.sizing.wiring.CircuitDuty;
import wayside.sizing.wiring.CircuitShortfall;
import wayside.sizing.wiring.SizedCircuit;
import wayside.sizing.wiring.SizedConductor;
import wayside.sizing.wiring.SizedFuse;

/** One circuit of an answer. */
final class CircuitWriter {
    private final Figures figures;

    /** @param figures those of the place where the circuit stands */
    CircuitWriter(Figures figures) {
        this.figures = figures;
    }

    CircuitView write(SizedCircuit circuit) {
        if (circuit instanceof SizedCircuit.Wired wired) {
            return wired(wired);
        }
        return notFeasible((SizedCircuit.NotFeasible) circuit);
    }

    private CircuitView wired(SizedCircuit.Wired wired) {
        SizedConductor conductor = wired.conductor();
        return view(
                wired.duty(),
                conductor(conductor),
                wired.metric().map(this::metric).orElse(null),
                fuse(wired),
                figures.at("voltageDropV", conductor.voltageDropV()),
                figures.at("voltageDropPercent", conductor.voltageDropPercent()),
                wired.governedBy().code(),
                parallel(conductor),
                null);
    }

    private CircuitView notFeasible(SizedCircuit.NotFeasible circuit) {
        return view(circuit.duty(), null, null, null, null, null, null, null, shortfall(circuit.shortfall()));
    }

    private CircuitView view(
            CircuitDuty duty,
            @Nullable ConductorView conductor,
            @Nullable MetricConductorView metric,
            @Nullable FuseView fuse,
            @Nullable Double dropV,
            @Nullable Double dropPercent,
            @Nullable String governedBy,
            @Nullable Integer parallel,
            @Nullable ShortfallView shortfall) {
        return new CircuitView(
                duty.name(),
                duty.details()
                        .count()
                        .map(count -> (int) figures.at("count", count))
                        .orElse(null),
                duty.rules().code(),
                shortfall == null,
                figures.at("currentA", duty.currentA()),
                figures.at("designCurrentA", duty.designCurrentA()),
                figures.at("lengthM", duty.lengthM()),
                figures.at("roundTripM", duty.roundTripM()),
                figures.at("voltageV", duty.voltageV()),
                figures.at("highestVoltageV", duty.highestVoltageV()),
                figures.at("insulationC", duty.surroundings().insulationC()),
                figures.at("ambientC", duty.surroundings().ambientC()),
                (int) figures.at("bundledConductors", duty.surroundings().bundledCount()),
                conductor,
                metric,
                fuse,
                dropV,
                dropPercent,
                figures.at("voltageDropLimitPercent", duty.voltageDropLimitPercent()),
                governedBy,
                parallel,
                shortfall);
    }

    private ConductorView conductor(SizedConductor conductor) {
        Figures here = figures.in("conductor");
        return new ConductorView(
                conductor.size().ratedAs().awg(),
                here.at("areaMm2", conductor.areaMm2()),
                here.at("ampacityA", conductor.ampacityA()),
                here.at("resistanceOhmPerKm", conductor.resistanceOhmPerKm()),
                here.at("outlastedA2s", conductor.outlastedA2s()));
    }

    private MetricConductorView metric(SizedConductor conductor) {
        Figures here = figures.in("metricConductor");
        return new MetricConductorView(
                here.at("areaMm2", conductor.areaMm2()),
                here.at("ampacityA", conductor.ampacityA()),
                here.at("resistanceOhmPerKm", conductor.resistanceOhmPerKm()),
                here.at("outlastedA2s", conductor.outlastedA2s()),
                here.at("voltageDropV", conductor.voltageDropV()),
                here.at("voltageDropPercent", conductor.voltageDropPercent()),
                parallel(conductor));
    }

    private FuseView fuse(SizedCircuit.Wired wired) {
        Figures here = figures.in("fuse");
        SizedFuse fuse = wired.fuse();
        return new FuseView(
                here.at("ratingA", fuse.ratingA()),
                fuse.link().type(),
                fuse.link().standard(),
                here.at("ratedVoltageV", fuse.link().ratedVoltageV()),
                here.at("breakingCapacityA", fuse.link().breakingA()),
                here.at("minimumInterruptA", wired.duty().interruptA()),
                here.at("maximumRatingA", wired.conductor().permittedFuseA()),
                fuse.letThroughA2s().map(heat -> here.at("letThroughA2s", heat)).orElse(null),
                fuse.refused().stream().map(CircuitWriter::refused).toList());
    }

    private ShortfallView shortfall(CircuitShortfall shortfall) {
        return ShortfallWriter.one(
                shortfall.message(), shortfall.needed(), shortfall.available(), figures.in("shortfall"));
    }

    private static RefusedFuseView refused(SizedFuse.Refusal refusal) {
        MessageView reason = MessageWriter.write(refusal.reason());
        return new RefusedFuseView(refusal.link().type(), reason.code(), reason.text(), reason.parameters());
    }

    private static @Nullable Integer parallel(SizedConductor conductor) {
        int count = (int) conductor.parallelCount().value();
        return count > 1 ? count : null;
    }
}
