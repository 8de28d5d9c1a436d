package wayside.server.operation.recommendation;

import io.swagger.v3.oas.annotations.media.Schema;
import org.jspecify.annotations.Nullable;

/** A pair of battery and array that is just sure enough. */
@Schema(
        name = "CurvePoint",
        description = "A pair of battery and array that is just sure enough beside the charger that was chosen.")
public record CurvePointView(
        @Schema(description = "Rated energy of the battery [Wh].")
        Double nominalEnergyWh,

        @Schema(description = "Rated power of the array [W].")
        Double solarPowerW,

        @Schema(description = "Rated output of the charger on the engine [A]; absent without one.") @Nullable
        Double alternatorChargerA,

        @Schema(description = "Mass of batteries, modules, controllers and chargers [kg].")
        Double massKg,

        @Schema(description = "Volume of batteries, controllers and chargers [L].")
        Double volumeL,

        @Schema(description = "Price of battery and array in your own money; absent without your prices.") @Nullable
        Double price) {}
