package wayside.server.operation.recommendation;

import io.swagger.v3.oas.annotations.media.Schema;
import org.jspecify.annotations.Nullable;

/** A stay, its sun and what the sun must bring. */
@Schema(name = "StaySun", description = "A stay, its sun and what the sun must bring.")
public record StaySunView(
        @Schema(description = "Number of the stay in the order of the trip, from 1.")
        Integer stay,

        Integer month,

        @Schema(description = "Irradiation of the mean day [kWh/m2].")
        Double horizontalKwhM2,

        @Schema(description = "Irradiation of the mean day on the panels [kWh/m2].")
        Double planeKwhM2,

        @Schema(description = "What the array brings on the mean day [Wh].")
        Double yieldWhPerDay,

        @Schema(description = "What the sun must bring each day [Wh].")
        Double needWhPerDay,

        @Schema(
                description =
                        "What a usual day brings above what it takes, engine and hookups included [Wh]; below 0 when it takes more.")
        Double overWhPerDay,

        @Schema(
                description =
                        "Usual days, engine and hookups included, that fill an empty battery again while everything runs;"
                                + " absent where a day brings no more than it takes.")
        @Nullable
        Double catchUpDays) {}
