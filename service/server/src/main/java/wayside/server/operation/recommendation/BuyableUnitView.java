package wayside.server.operation.recommendation;

import io.swagger.v3.oas.annotations.media.Schema;

/** The smallest self-contained unit that would do. */
@Schema(name = "BuyableUnit", description = "The smallest self-contained unit that would do.")
public record BuyableUnitView(
        @Schema(description = "Rated [Wh].") Double energyWh,

        @Schema(description = "Of it [kg].") Double massKg) {}
