package wayside.server.operation.recommendation;

import io.swagger.v3.oas.annotations.media.Schema;
import org.jspecify.annotations.Nullable;

/** What the trade would say without reckoning. */
@Schema(name = "RuleOfThumb", description = "What the trade would say without reckoning.")
public record RuleOfThumbView(
        @Schema(description = "Of the bank [Wh].") Double nominalEnergyWh,

        @Schema(description = "Of the array [W]; absent without sun.") @Nullable
        Double solarPowerW,

        @Schema(description = "That the rule counts with [d].")
        Double autonomyDays,

        @Schema(description = "What it would risk [share]; when a chance is accepted.") @Nullable
        Double chanceOfRunningFlat) {}
