package wayside.server.operation.rechargetime;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.Valid;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.Size;
import java.util.List;
import org.jspecify.annotations.Nullable;
import wayside.server.binding.rule.Rising;
import wayside.server.binding.rule.ZeroOrFrom;
import wayside.server.operation.shared.BuiltSystemInput;
import wayside.server.operation.shared.Limits;

/** Asks how long a battery takes to fill. */
@Schema(description = "Asks how long a battery takes to fill.")
@Rising({"fromStateOfCharge", "toStateOfCharge"})
public record RechargeTimeRequest(
        @Valid BuiltSystemInput system,

        @Schema(description = "Where it starts; 0 when left open.", example = "0.2")
        @DecimalMin("0")
        @DecimalMax("0.99")
        @Nullable
        Double fromStateOfCharge,

        @Schema(description = "Where it ends; 1, full, when left open.", example = "1")
        @DecimalMin("0.01")
        @DecimalMax("1")
        @Nullable
        Double toStateOfCharge,

        @Schema(description = "Sources that run at once; all that the system has when left open.")
        @Size(min = 1, max = 3)
        @Nullable
        List<SourceCode> sources,

        @Schema(description = "Share of full sun, 1,000 W/m2; 1 when left open.", example = "0.7")
        @DecimalMin("0")
        @DecimalMax("1.2")
        @Nullable
        Double sunShare,

        @Schema(description = "Air around panels and battery [C]; 20 when left open.", example = "20")
        @DecimalMin(Limits.TEMPERATURE_LOW_C)
        @DecimalMax(Limits.TEMPERATURE_HIGH_C)
        @Nullable
        Double ambientC,

        @Schema(description = "Drawn by loads meanwhile [W]; 0 when left open.", example = "40")
        @ZeroOrFrom(Limits.LEAST_POWER_W)
        @DecimalMax(Limits.POWER_W)
        @Nullable
        Double loadW) {}
