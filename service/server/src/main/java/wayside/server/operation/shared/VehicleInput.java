package wayside.server.operation.shared;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import org.jspecify.annotations.Nullable;
import wayside.server.binding.rule.OneOfNumbers;
import wayside.server.binding.rule.ZeroOrFrom;

/** What the vehicle brings. */
@Schema(name = "Vehicle", description = "What the vehicle brings: its own net and its alternator.")
public record VehicleInput(
        @Schema(description = "Nominal voltage of the vehicle's own net [V]; 12 when left open.", example = "12")
        @OneOfNumbers({12, 24})
        @Nullable
        Double voltageV,

        @Schema(description = "Current on the label of its alternator [A].", example = "150")
        @DecimalMin(Limits.LEAST_CURRENT_A)
        @DecimalMax("2000")
        @Nullable
        Double alternatorRatingA,

        @Schema(description = "Mass that is left for the whole system [kg].", example = "250")
        @ZeroOrFrom("0.1")
        @DecimalMax("100000")
        @Nullable
        Double payloadKg) {}
