package wayside.server.operation.recommendation;

import io.swagger.v3.oas.annotations.media.Schema;
import org.jspecify.annotations.Nullable;

/** The charger on shore power. */
@Schema(name = "ShoreCharging", description = "The charger on shore power.")
public record ShoreView(
        @Schema(description = "Rated output [W].") Double chargerPowerW,
        @Schema(description = "Drawn from the hookup [W].") Double mainsPowerW,

        @Schema(description = "On a day of the stay that plugs in and takes most [Wh].")
        Double energyPerDayWh,

        @Schema(description = "From empty by itself [h].") Double hoursToFull,

        @Schema(description = "Absent when the charger was given.") @Nullable
        CurrentNeedView needed,

        @Schema(description = "Absent when the charger was given.") @Nullable
        BuyableChargerView buyable) {}
