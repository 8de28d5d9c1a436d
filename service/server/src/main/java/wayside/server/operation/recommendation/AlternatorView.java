package wayside.server.operation.recommendation;

import io.swagger.v3.oas.annotations.media.Schema;
import org.jspecify.annotations.Nullable;

/** The charger between alternator and bank. */
@Schema(name = "AlternatorCharging", description = "The charger between alternator and bank.")
public record AlternatorView(
        @Schema(description = "Rated output [A].") Double chargerCurrentA,

        @Schema(description = "The most that the alternator allows, at the bank [A].")
        Double chargerLimitA,

        @Schema(description = "At the charging voltage of the bank [W].")
        Double chargerPowerW,

        @Schema(description = "On a day of the stay that drives and takes most [Wh].")
        Double energyPerDayWh,

        @Schema(description = "From empty by itself [h].") Double hoursToFull,

        @Schema(description = "Absent when the charger was given.") @Nullable
        CurrentNeedView needed,

        @Schema(description = "Absent when the charger was given.") @Nullable
        BuyableChargerView buyable) {}
