package wayside.server.operation.shared;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import org.jspecify.annotations.Nullable;
import wayside.server.binding.rule.ExactlyOneOf;

/** How sunny a month is. */
@Schema(name = "Sky", description = "How sunny the month is: the mean irradiation of a day, or the clearness index.")
@ExactlyOneOf({"dailyIrradiationKwhM2", "clearnessIndex"})
public record SkyInput(
        @Schema(
                description =
                        "Mean irradiation of a day on the horizontal [kWh/m2]; refused above what falls above the atmosphere there.",
                example = "2.5")
        @DecimalMin("0")
        @DecimalMax("15")
        @Nullable
        Double dailyIrradiationKwhM2,

        @Schema(description = "Share of the irradiation above the atmosphere that reaches the ground.", example = "0.5")
        @DecimalMin("0.01")
        @DecimalMax("0.9")
        @Nullable
        Double clearnessIndex) {}
