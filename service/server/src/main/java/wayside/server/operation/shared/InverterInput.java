package wayside.server.operation.shared;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import org.jspecify.annotations.Nullable;
import wayside.server.binding.rule.ZeroOrFrom;

/** What is known of the inverter. */
@Schema(name = "Inverter", description = "What is known of the inverter; each figure may be left open.")
public record InverterInput(
        @Schema(description = "Rated output [W].", example = "1000")
        @DecimalMin(Limits.LEAST_POWER_W)
        @DecimalMax(Limits.POWER_W)
        @Nullable
        Double continuousW,

        @Schema(description = "Output for a moment [W].", example = "2000")
        @DecimalMin(Limits.LEAST_POWER_W)
        @DecimalMax(Limits.POWER_W)
        @Nullable
        Double surgeW,

        @Schema(description = "Drawn from the battery while on without load [W].", example = "12")
        @ZeroOrFrom(Limits.LEAST_POWER_W)
        @DecimalMax("10000")
        @Nullable
        Double idleW,

        @Schema(description = "Flat efficiency, instead of the loss curve.", example = "0.9")
        @DecimalMin("0.05")
        @DecimalMax("1")
        @Nullable
        Double efficiency,

        @Schema(description = "Hours a day switched on [h]; 24 when left open.", example = "3")
        @DecimalMin("0")
        @DecimalMax("24")
        @Nullable
        Double hoursPerDay) {}
