package wayside.server.operation.recommendation;

import io.swagger.v3.oas.annotations.media.Schema;

/** Where a vehicle is plugged in. */
@Schema(name = "Inlet", description = "Where a vehicle is plugged in, and the lead to the site.")
public record InletView(
        @Schema(description = "Rating of the inlet [A].") Double ratingA,

        @Schema(description = "Cross-section of each conductor of the lead [mm2].")
        Double leadAreaMm2,

        @Schema(description = "Longest lead [m].") Double longestLeadM) {}
