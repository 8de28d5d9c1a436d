package wayside.server.operation.solaryield;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.Valid;
import jakarta.validation.constraints.DecimalMax;
import org.jspecify.annotations.Nullable;
import wayside.server.binding.rule.OneOfNumbers;
import wayside.server.binding.rule.ZeroOrFrom;
import wayside.server.operation.shared.Limits;
import wayside.server.operation.shared.PanelInput;

/** Asks for the yield of an array in a typical year that comes with the request. */
@Schema(description = "Asks what an array brings in a typical year; place and weather are the file's.")
public record SolarYieldOfYearRequest(
        @Valid @Nullable PanelInput panel,

        @Schema(description = "Rated power of the array [W]; the yield of each 100 W when left open.", example = "400")
        @ZeroOrFrom(Limits.LEAST_POWER_W)
        @DecimalMax(Limits.POWER_W)
        @Nullable
        Double solarPowerW,

        @Schema(
                description =
                        "Nominal voltage of the battery bus [V], for the check of the strings; 12 when left open.",
                example = "12")
        @OneOfNumbers({12, 24, 48})
        @Nullable
        Double busVoltageV,

        @Schema(description = "How the modules are wired, when their strings shall be checked.") @Valid @Nullable
        StringsInput strings) {}
