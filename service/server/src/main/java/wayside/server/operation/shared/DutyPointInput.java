package wayside.server.operation.shared;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;

/** A point of a fridge's curve of duty against temperature. */
@Schema(
        name = "DutyPoint",
        description = "The share of the time that a fridge's compressor runs at an ambient" + " temperature.")
public record DutyPointInput(
        @Schema(description = "Temperature around the fridge [C].", example = "25")
        @DecimalMin(Limits.TEMPERATURE_LOW_C)
        @DecimalMax(Limits.TEMPERATURE_HIGH_C)
        Double ambientC,

        @Schema(description = "Share of the time in which it runs.", example = "0.35") @DecimalMin("0") @DecimalMax("1")
        Double dutyCycle) {}
