package wayside.server.api;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import org.jspecify.annotations.Nullable;

/** How sure the customer wants to be. */
@Schema(name = "Target", description = "How sure the customer wants to be.")
public record TargetInput(
        @Schema(description = "Days that a full bank carries the loads with no charging at all.", example = "2")
        @DecimalMin("0.1")
        @DecimalMax("30")
        @Nullable
        Double autonomyDays,

        @Schema(description = "Accepted chance that an essential load goes short on the trip.", example = "0.05")
        @DecimalMin("0.001")
        @DecimalMax("0.9")
        @Nullable
        Double chanceOfRunningFlat) {}
