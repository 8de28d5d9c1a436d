package wayside.server.operation.energybudget;

import io.swagger.v3.oas.annotations.media.Schema;

/** All loads of one supply together. */
@Schema(name = "SupplyDemand", description = "All loads of one supply together.")
public record SupplyDemandView(
        @Schema(description = "Energy of a day at the loads' plugs [Wh].")
        Double dailyWh,

        @Schema(description = "All running at once [W].") Double peakW,

        @Schema(description = "Peak as a current out of the battery at its lowest voltage [A].")
        Double peakA,

        @Schema(description = "All running, and the hardest start [W].")
        Double surgeW) {}
