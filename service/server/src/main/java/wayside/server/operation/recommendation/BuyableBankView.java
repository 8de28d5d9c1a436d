package wayside.server.operation.recommendation;

import io.swagger.v3.oas.annotations.media.Schema;

/** The batteries that the bank is made of: the next size that exists. */
@Schema(name = "BuyableBank", description = "The batteries that the bank is made of: the next size that exists.")
public record BuyableBankView(
        @Schema(description = "Batteries.") Integer count,

        @Schema(description = "Batteries in each string.") Integer seriesCount,

        @Schema(description = "Strings.") Integer parallelCount,

        @Schema(description = "Nominal voltage of each battery [V].")
        Double voltageV,

        @Schema(description = "Rated capacity of each battery [Ah].")
        Double capacityAh,

        @Schema(description = "Length of each [mm].") Double lengthMm,

        @Schema(description = "Width of each [mm].") Double widthMm,

        @Schema(description = "Height of each [mm].") Double heightMm) {}
