package wayside.server.operation.recommendation;

import io.swagger.v3.oas.annotations.media.Schema;

/** The smallest self-contained unit that would do. */
@Schema(name = "BuyableUnit", description = "The smallest self-contained unit that would do.")
public record BuyableUnitView(
        @Schema(description = "Rated energy of it [Wh].") Double energyWh,

        @Schema(description = "Mass of it [kg].") Double massKg) {}
