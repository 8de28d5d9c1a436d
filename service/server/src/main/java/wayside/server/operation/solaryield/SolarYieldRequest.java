package wayside.server.operation.solaryield;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.Valid;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.Size;
import java.util.List;
import org.jspecify.annotations.Nullable;
import wayside.server.binding.rule.OneOfNumbers;
import wayside.server.binding.rule.PossibleSky;
import wayside.server.binding.rule.ZeroOrFrom;
import wayside.server.operation.shared.Limits;
import wayside.server.operation.shared.PanelInput;
import wayside.server.operation.shared.PlaceInput;

/** Asks for the yield of an array, month by month. */
@Schema(description = "Asks what an array brings at a place, month by month.")
@PossibleSky
public record SolarYieldRequest(
        @Valid PlaceInput place,

        @Valid @Nullable PanelInput panel,

        @Schema(description = "Rated power of the array [W]; the yield of each 100 W when left open.", example = "400")
        @ZeroOrFrom(Limits.LEAST_POWER_W)
        @DecimalMax(Limits.POWER_W)
        @Nullable
        Double solarPowerW,

        @Schema(description = "The months asked for; all twelve when left open.")
        @Size(min = 1, max = Limits.MONTHS)
        @Nullable
        List<@Valid MonthInput> months,

        @Schema(
                description =
                        "Nominal voltage of the battery bus [V], for the check of the strings; 12 when left open.",
                example = "12")
        @OneOfNumbers({12, 24, 48})
        @Nullable
        Double busVoltageV,

        @Schema(description = "How the modules are wired, when their strings shall be checked.") @Valid @Nullable
        StringsInput strings) {}
