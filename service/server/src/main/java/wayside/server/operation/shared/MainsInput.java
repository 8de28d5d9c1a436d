package wayside.server.operation.shared;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import org.jspecify.annotations.Nullable;
import wayside.server.binding.rule.OneOfNumbers;

/** The hookup that the vehicle plugs into. */
@Schema(
        name = "Mains",
        description =
                "The hookup that the vehicle plugs into, for the hours that stays have of it. The shore charger takes"
                        + " what the AC loads leave.")
public record MainsInput(
        @Schema(description = "Nominal voltage [V]; 230 when left open.", example = "230")
        @OneOfNumbers({120, 230})
        @Nullable
        Double voltageV,

        @Schema(
                description = "What its breaker lets through [A]; 10 at 230 V and 30 at 120 V when left open.",
                example = "6")
        @DecimalMin("0.5")
        @DecimalMax("125")
        @Nullable
        Double hookupLimitA,

        @Schema(
                description =
                        "Whether AC loads run straight off the hookup while plugged in, by a transfer switch or through the"
                                + " inverter; true when left open. If not, they run off the battery through the inverter.")
        @Nullable
        Boolean passThrough) {}
