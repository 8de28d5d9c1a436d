package wayside.server.mapping;

import org.jspecify.annotations.Nullable;
import wayside.server.api.CircuitView;
import wayside.server.api.ConductorView;
import wayside.server.api.FuseView;
import wayside.server.api.MetricConductorView;
import wayside.server.api.RefusedFuseView;
import wayside.server.api.ShortfallView;
import wayside.sizing.trace.Derived;
import wayside.sizing.wiring.CircuitDuty;
import wayside.sizing.wiring.CircuitShortfall;
import wayside.sizing.wiring.SizedCircuit;
import wayside.sizing.wiring.SizedConductor;
import wayside.sizing.wiring.SizedFuse;

/** One circuit of an answer. */
final class CircuitWriter {
    private final String at;
    private final Figures figures;

    /** @param at JSON Pointer of the circuit in the answer */
    CircuitWriter(String at, Figures figures) {
        this.at = at;
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
                figure("/voltageDropV", conductor.voltageDropV()),
                figure("/voltageDropPercent", conductor.voltageDropPercent()),
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
                duty.rules().code(),
                shortfall == null,
                figure("/currentA", duty.currentA()),
                figure("/designCurrentA", duty.designCurrentA()),
                figure("/lengthM", duty.lengthM()),
                figure("/roundTripM", duty.roundTripM()),
                figure("/voltageV", duty.voltageV()),
                figure("/insulationC", duty.surroundings().insulationC()),
                figure("/ambientC", duty.surroundings().ambientC()),
                (int) figure("/bundledConductors", duty.surroundings().bundledCount()),
                conductor,
                metric,
                fuse,
                dropV,
                dropPercent,
                figure("/voltageDropLimitPercent", duty.voltageDropLimitPercent()),
                governedBy,
                parallel,
                shortfall);
    }

    private ConductorView conductor(SizedConductor conductor) {
        return new ConductorView(
                conductor.size().ratedAs().awg(),
                figure("/conductor/areaMm2", conductor.areaMm2()),
                figure("/conductor/ampacityA", conductor.ampacityA()),
                figure("/conductor/resistanceOhmPerKm", conductor.resistanceOhmPerKm()));
    }

    private MetricConductorView metric(SizedConductor conductor) {
        return new MetricConductorView(
                figure("/metricConductor/areaMm2", conductor.areaMm2()),
                figure("/metricConductor/ampacityA", conductor.ampacityA()),
                figure("/metricConductor/resistanceOhmPerKm", conductor.resistanceOhmPerKm()),
                figure("/metricConductor/voltageDropV", conductor.voltageDropV()),
                figure("/metricConductor/voltageDropPercent", conductor.voltageDropPercent()),
                parallel(conductor));
    }

    private FuseView fuse(SizedCircuit.Wired wired) {
        SizedFuse fuse = wired.fuse();
        return new FuseView(
                figure("/fuse/ratingA", fuse.ratingA()),
                fuse.link().type(),
                fuse.link().standard(),
                figure("/fuse/ratedVoltageV", fuse.link().ratedVoltageV()),
                figure("/fuse/breakingCapacityA", fuse.link().breakingA()),
                figure("/fuse/minimumInterruptA", wired.duty().interruptA()),
                figure("/fuse/maximumRatingA", wired.conductor().permittedFuseA()),
                fuse.refused().stream()
                        .map(refusal -> new RefusedFuseView(refusal.link().type(), refusal.reason()))
                        .toList());
    }

    private ShortfallView shortfall(CircuitShortfall shortfall) {
        return new ShortfallView(
                shortfall.code(),
                shortfall.text(),
                figure("/shortfall/needed", shortfall.needed()),
                figure("/shortfall/available", shortfall.available()),
                shortfall.needed().unit().symbol());
    }

    private static @Nullable Integer parallel(SizedConductor conductor) {
        int count = (int) conductor.parallelCount().value();
        return count > 1 ? count : null;
    }

    private double figure(String field, Derived value) {
        return figures.at(at + field, value);
    }
}
