package wayside.server.operation.shared;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import org.jspecify.annotations.Nullable;

/** Air temperature of a month. */
@Schema(name = "Ambient", description = "Air temperature of the month.")
public record AmbientInput(
        @Schema(description = "Mean over the day [C].", example = "12")
        @DecimalMin(Limits.TEMPERATURE_LOW_C)
        @DecimalMax(Limits.TEMPERATURE_HIGH_C)
        Double meanC,

        @Schema(
                description =
                        "Difference between the day's highest and lowest temperature, in kelvin [K] although its name ends in C; more"
                                + " under clear skies when left open.",
                example = "10")
        @DecimalMin("0")
        @DecimalMax("50")
        @Nullable
        Double dailySwingC) {}
