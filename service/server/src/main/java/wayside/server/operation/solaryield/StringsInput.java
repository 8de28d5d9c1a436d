package wayside.server.operation.solaryield;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.Valid;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.Max;
import jakarta.validation.constraints.Min;
import org.jspecify.annotations.Nullable;
import wayside.server.operation.shared.Limits;

/** How the modules are wired. */
@Schema(name = "Strings", description = "How the modules are wired, for the check of their strings.")
public record StringsInput(
        @Valid SolarModuleInput module,

        @Schema(description = "Modules in a string; as few as charge the bank when left open.", example = "2")
        @Min(1)
        @Max(100)
        @Nullable
        Integer seriesCount,

        @Schema(description = "Strings side by side; 1 when left open.", example = "1") @Min(1) @Max(100) @Nullable
        Integer parallelCount,

        @Schema(description = "Highest voltage that the charge controller stands [V].", example = "100")
        @DecimalMin("10")
        @DecimalMax(Limits.VOLTAGE_V)
        @Nullable
        Double controllerMaximumVoltageV,

        @Schema(
                description = "Air on the coldest morning [C]; a cold spell below the months' own when left open.",
                example = "-15")
        @DecimalMin(Limits.TEMPERATURE_LOW_C)
        @DecimalMax(Limits.TEMPERATURE_HIGH_C)
        @Nullable
        Double coldestC) {}
