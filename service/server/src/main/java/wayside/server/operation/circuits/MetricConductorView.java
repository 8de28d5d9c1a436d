package wayside.server.operation.circuits;

import io.swagger.v3.oas.annotations.media.Schema;
import org.jspecify.annotations.Nullable;

/** A flexible conductor by its nominal area. */
@Schema(name = "MetricConductor", description = "A flexible conductor (class 5) that carries the same, in its place.")
public record MetricConductorView(
        @Schema(description = "Nominal area of one conductor, not its diameter [mm2].", example = "16")
        Double areaMm2,

        @Schema(
                description =
                        "What it may carry where it lies: that of the next thinner gauge, all in parallel together"
                                + " [A].")
        Double ampacityA,

        @Schema(description = "Resistance of one conductor: the largest that the standard allows, warmed [Ohm/km].")
        Double resistanceOhmPerKm,

        @Schema(
                description =
                        "Heat of a short circuit that one conductor outlasts, k2 S2 from its insulation's class, for at most 5 s [A2s].")
        Double outlastedA2s,

        @Schema(description = "Both ways [V].") Double voltageDropV,

        @Schema(description = "Voltage drop in percent of the nominal voltage [%].")
        Double voltageDropPercent,

        @Schema(description = "Conductors side by side each way, when one is not enough.") @Nullable
        Integer parallelConductors) {}
