package wayside.server.operation.recommendation;

import io.swagger.v3.oas.annotations.media.Schema;

/** The modules that the array is made of: the next size that exists. */
@Schema(name = "BuyableArray", description = "The modules that the array is made of: the next size that exists.")
public record BuyableArrayView(
        @Schema(description = "Modules.") Integer count,

        @Schema(description = "Of each, rated [W].") Double modulePowerW,

        @Schema(description = "Of each [mm].") Double lengthMm,

        @Schema(description = "Of each [mm].") Double widthMm,

        @Schema(description = "Of all [kg].") Double massKg,

        @Schema(description = "Modules of this size.") Integer roofTakes) {}
