package wayside.server.operation.recommendation;

import io.swagger.v3.oas.annotations.media.Schema;
import org.jspecify.annotations.Nullable;

/** What the trade would say without reckoning. */
@Schema(name = "RuleOfThumb", description = "What the trade would say without reckoning.")
public record RuleOfThumbView(
        @Schema(description = "Rated energy of the bank [Wh].")
        Double nominalEnergyWh,

        @Schema(description = "Rated power of the array [W]; absent without sun.") @Nullable
        Double solarPowerW,

        @Schema(description = "Days without charge that the rule counts with [d].")
        Double autonomyDays,

        @Schema(description = "What it would risk [share]; when a chance is accepted.") @Nullable
        Double chanceOfRunningFlat) {}
