package wayside.server.operation.recommendation;

import io.swagger.v3.oas.annotations.media.Schema;

/** The chance of a recommended system. */
@Schema(
        name = "SizedChance",
        description =
                "Chance of running flat of the recommended system, and the range it lies in with 95 % confidence.")
public record SizedChanceView(
        @Schema(description = "Share of the lives of the trip.")
        Double value,

        Double low,
        Double high,

        @Schema(description = "Chance while the battery is new.")
        Double whenNew,

        @Schema(
                description =
                        "Hours of a usual trip in which charge is on offer and the battery is too cold for it [h];"
                                + " endurance tells how warm it is by the hour.")
        Double coldLockoutHours,

        @Schema(description = "How often the trip was lived.")
        Integer runs,

        @Schema(description = "Seed of the random weather.") Integer seed) {}
