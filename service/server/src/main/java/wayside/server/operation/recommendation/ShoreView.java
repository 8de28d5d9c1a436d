package wayside.server.operation.recommendation;

import io.swagger.v3.oas.annotations.media.Schema;
import org.jspecify.annotations.Nullable;

/** The charger on shore power. */
@Schema(name = "ShoreCharging", description = "The charger on shore power.")
public record ShoreView(
        @Schema(description = "Rated output [W].") Double chargerPowerW,
        @Schema(description = "Drawn from the hookup [W].") Double mainsPowerW,

        @Schema(description = "Energy of a day, on the stay that plugs in and takes most [Wh].")
        Double energyPerDayWh,

        @Schema(description = "Hours from empty to full by this charger alone [h].")
        Double hoursToFull,

        @Schema(description = "Absent when the charger was given.") @Nullable
        CurrentNeedView needed,

        @Schema(description = "Absent when the charger was given.") @Nullable
        BuyableChargerView buyable) {}
