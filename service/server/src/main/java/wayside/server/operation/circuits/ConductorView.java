package wayside.server.operation.circuits;

import io.swagger.v3.oas.annotations.media.Schema;

/** A conductor of the gauge series. */
@Schema(name = "Conductor", description = "A conductor of the American wire gauge, in its place.")
public record ConductorView(
        @Schema(description = "Gauge.", example = "6") String awg,

        @Schema(description = "Cross-section of one conductor, as the rule set understands the gauge [mm2].")
        Double areaMm2,

        @Schema(description = "What it may carry where it lies, all in parallel together [A].")
        Double ampacityA,

        @Schema(description = "Resistance of one conductor, as the voltage drop is reckoned [Ohm/km].")
        Double resistanceOhmPerKm,

        @Schema(
                description =
                        "Heat of a short circuit that one conductor outlasts, k2 S2 from its insulation's class, for at most 5 s [A2s].")
        Double outlastedA2s) {}
