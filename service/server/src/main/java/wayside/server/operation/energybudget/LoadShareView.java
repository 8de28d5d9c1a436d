package wayside.server.operation.energybudget;

import io.swagger.v3.oas.annotations.media.Schema;

/** A load and its part in the day. */
@Schema(name = "LoadShare", description = "A load and its part in the day.")
public record LoadShareView(
        String name,

        @Schema(description = "Energy of a day at its plug [Wh].")
        Double dailyWh,

        @Schema(description = "Share of the energy of all loads.")
        Double share) {}
