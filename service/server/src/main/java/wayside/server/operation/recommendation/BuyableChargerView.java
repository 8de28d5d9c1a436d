package wayside.server.operation.recommendation;

import io.swagger.v3.oas.annotations.media.Schema;

/** The chargers that it is: the next size that exists. */
@Schema(name = "BuyableCharger", description = "The chargers that it is: the next size that exists.")
public record BuyableChargerView(
        @Schema(description = "Chargers side by side.") Integer count,

        @Schema(description = "Rated output of each [A].") Double currentA) {}
