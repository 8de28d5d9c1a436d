package wayside.server.operation.solaryield;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import org.jspecify.annotations.Nullable;

/** A solar module by its label. */
@Schema(name = "SolarModule", description = "A solar module by its label, at standard test conditions.")
public record SolarModuleInput(
        @Schema(description = "Open-circuit voltage [V].", example = "22.5") @DecimalMin("1") @DecimalMax("300")
        Double openCircuitV,

        @Schema(description = "Voltage at its best point [V].", example = "18.6") @DecimalMin("1") @DecimalMax("300")
        Double workingV,

        @Schema(description = "Short-circuit current [A].", example = "6.1") @DecimalMin("0.01") @DecimalMax("100")
        Double shortCircuitA,

        @Schema(
                description = "Temperature coefficient of the open-circuit voltage, as a share of it [1/K]: -0.003 for"
                        + " -0.3 % per kelvin.",
                example = "-0.003")
        @DecimalMin("-0.02")
        @DecimalMax("0")
        @Nullable
        Double voltagePerK) {}
