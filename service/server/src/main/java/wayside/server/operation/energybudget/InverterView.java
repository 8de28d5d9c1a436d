package wayside.server.operation.energybudget;

import io.swagger.v3.oas.annotations.media.Schema;

/** The inverter that the loads need, or that was given. */
@Schema(name = "InverterNeed", description = "The inverter that the loads need, or that was given.")
public record InverterView(
        @Schema(description = "Rated output [W].") Double continuousW,
        @Schema(description = "Output for a moment [W].") Double surgeW,
        @Schema(description = "Drawn without load [W].") Double idleW,
        @Schema(description = "Switched on [h].") Double hoursPerDay) {}
