package wayside.server.operation.recommendation;

import io.swagger.v3.oas.annotations.media.Schema;

/** The modules that the array is made of: the next size that exists. */
@Schema(name = "BuyableArray", description = "The modules that the array is made of: the next size that exists.")
public record BuyableArrayView(
        @Schema(description = "Modules.") Integer count,

        @Schema(description = "Rated power of each module [W].")
        Double modulePowerW,

        @Schema(description = "Length of each [mm].") Double lengthMm,

        @Schema(description = "Width of each [mm].") Double widthMm,

        @Schema(description = "Mass of all modules [kg].") Double massKg,

        @Schema(description = "Modules of this size.") Integer roofTakes) {}
