package wayside.server.operation.solaryield;

import io.swagger.v3.oas.annotations.media.Schema;
import wayside.server.answer.OpenCodes;

/** What an array brings in a month. */
@Schema(name = "YieldMonth", description = "What an array brings on the mean day of a month.")
public record YieldMonthView(
        @Schema(description = "1 to 12.") Integer month,

        @Schema(description = "Where the sunshine comes from: given, world-climatology or latitude-band.")
        @OpenCodes("sky-basis")
        String skyBasis,

        @Schema(description = "Share of the sunlight above the atmosphere that reaches the ground.")
        Double clearnessIndex,

        @Schema(description = "Light on the horizontal [kWh/m2 per day].")
        Double horizontalKwhM2,

        RangeView horizontalRangeKwhM2,

        @Schema(description = "Light on the panel's plane [kWh/m2 per day].")
        Double planeKwhM2,

        @Schema(description = "Energy out of the charge controller [Wh per day].")
        Double yieldWhPerDay,

        @Schema(
                description =
                        "Range of that energy with the year's scatter and the errors of sky and model [Wh per day].")
        RangeView yieldRangeWhPerDay,

        @Schema(description = "Cells in the sun, each hour counting by its light [C].")
        Double cellTemperatureC,

        @Schema(description = "Air, mean of the month [C].") Double ambientC,

        @Schema(description = "Hours from sunrise to sunset [h].")
        Double daylightHours,

        @Schema(description = "Height of the sun at noon; negative in polar night.")
        Double noonAltitudeDegrees,

        @Schema(description = "The tilt towards the equator that would catch most.")
        Double bestTiltDegrees,

        @Schema(description = "What the panel as it sits catches less than at that tilt.")
        Double lossAgainstBestTiltShare) {}
