package wayside.server.operation.recommendation;

import io.swagger.v3.oas.annotations.media.Schema;
import org.jspecify.annotations.Nullable;

/** The charger between alternator and bank. */
@Schema(name = "AlternatorCharging", description = "The charger between alternator and bank.")
public record AlternatorView(
        @Schema(description = "Rated output [A].") Double chargerCurrentA,

        @Schema(description = "The most that the alternator allows, at the bank [A].")
        Double chargerLimitA,

        @Schema(description = "Power of the charger at the charging voltage of the bank [W].")
        Double chargerPowerW,

        @Schema(description = "Energy of a day, on the stay that drives and takes most [Wh].")
        Double energyPerDayWh,

        @Schema(description = "Hours from empty to full by this charger alone [h].")
        Double hoursToFull,

        @Schema(description = "Absent when the charger was given.") @Nullable
        CurrentNeedView needed,

        @Schema(description = "Absent when the charger was given.") @Nullable
        BuyableChargerView buyable) {}
