package wayside.server.operation.recommendation;

import io.swagger.v3.oas.annotations.media.Schema;

/** The batteries that the bank is made of: the next size that exists. */
@Schema(name = "BuyableBank", description = "The batteries that the bank is made of: the next size that exists.")
public record BuyableBankView(
        @Schema(description = "Batteries.") Integer count,

        @Schema(description = "In each string.") Integer seriesCount,

        @Schema(description = "Strings.") Integer parallelCount,

        @Schema(description = "Of each, nominal [V].") Double voltageV,

        @Schema(description = "Of each, rated [Ah].") Double capacityAh,

        @Schema(description = "Of each [mm].") Double lengthMm,

        @Schema(description = "Of each [mm].") Double widthMm,

        @Schema(description = "Of each [mm].") Double heightMm) {}
