package wayside.server.api;

import io.swagger.v3.oas.annotations.media.Schema;
import org.jspecify.annotations.Nullable;

/** A pair of battery and array that is just sure enough. */
@Schema(name = "CurvePoint", description = "A pair of battery and array that is just sure enough.")
public record CurvePointView(
        @Schema(description = "Rated energy of the battery [Wh].")
        Double nominalEnergyWh,

        @Schema(description = "Rated power of the array [W].")
        Double solarPowerW,

        @Schema(description = "Of both [kg].") Double massKg,

        @Schema(description = "Of the battery [L].") Double volumeL,

        @Schema(description = "Of both in your own money; absent without your prices.") @Nullable
        Double price) {}
