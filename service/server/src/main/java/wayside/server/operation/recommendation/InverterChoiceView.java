package wayside.server.operation.recommendation;

import io.swagger.v3.oas.annotations.media.Schema;
import org.jspecify.annotations.Nullable;

/** The inverter that the AC loads need, or that was given. */
@Schema(name = "InverterChoice", description = "The inverter that the AC loads need, or that was given.")
public record InverterChoiceView(
        @Schema(description = "Rated output [W].") Double continuousW,
        @Schema(description = "Output for a moment [W].") Double surgeW,
        @Schema(description = "Drawn without load [W].") Double idleW,

        @Schema(description = "Current out of the bank at full rating and the lowest voltage of the bank [A].")
        Double batteryCurrentA,

        @Schema(description = "Absent when the inverter was given.") @Nullable
        PowerNeedView needed,

        @Schema(description = "Absent when the inverter was given, or where none is made so large.") @Nullable
        BuyableInverterView buyable) {}
