package wayside.server.operation.shared;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import org.jspecify.annotations.Nullable;

/** A heater that a battery feeds and that keeps it out of the frost. */
@Schema(
        name = "BatteryHeater",
        description = "A heater that the battery feeds and that keeps it out of the frost. What it takes is counted.")
@OnBelowOff
public record BatteryHeaterInput(
        @Schema(description = "Power while it is on [W].", example = "40") @DecimalMin("0.1") @DecimalMax("5000")
        Double powerW,

        @Schema(description = "It goes on when the battery is colder than this [C]; 2 when left open.", example = "2")
        @DecimalMin("-30")
        @DecimalMax("40")
        @Nullable
        Double onBelowC,

        @Schema(
                description =
                        "It goes off when the battery is warmer than this [C]; 3 K above the other when left open.",
                example = "5")
        @DecimalMin("-30")
        @DecimalMax("45")
        @Nullable
        Double offAboveC) {}
