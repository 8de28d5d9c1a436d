package wayside.server.operation.energybudget;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.Valid;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.Size;
import java.util.List;
import org.jspecify.annotations.Nullable;
import wayside.server.binding.rule.OneOfNumbers;
import wayside.server.binding.rule.UniqueNames;
import wayside.server.binding.rule.ZeroOrFrom;
import wayside.server.operation.shared.InverterInput;
import wayside.server.operation.shared.Limits;
import wayside.server.operation.shared.LoadInput;

/** Asks for a day's energy budget. */
@Schema(description = "Asks what a usual day takes out of the battery.")
public record EnergyBudgetRequest(
        @Schema(description = "What the customer wants to run.") @Size(min = 1, max = Limits.LOADS) @UniqueNames
        List<@Valid LoadInput> loads,

        @Schema(description = "Nominal voltage of the battery bus [V]; 12 when left open.", example = "12")
        @OneOfNumbers({12, 24, 48})
        @Nullable
        Double busVoltageV,

        @Valid @Nullable InverterInput inverter,

        @Schema(description = "Constant draw of monitors, outlets and electronics [W].", example = "5")
        @ZeroOrFrom(Limits.LEAST_POWER_W)
        @DecimalMax("10000")
        @Nullable
        Double standbyW,

        @Schema(description = "Air temperature for a fridge's duty [C].", example = "25")
        @DecimalMin(Limits.TEMPERATURE_LOW_C)
        @DecimalMax(Limits.TEMPERATURE_HIGH_C)
        @Nullable
        Double ambientC,

        @Schema(
                description =
                        "Nominal voltage that the DC loads are made for [V]; 12 when left open. Where it is not the bus's own, a"
                                + " converter stands between.",
                example = "12")
        @OneOfNumbers({12, 24, 48})
        @Nullable
        Double dcLoadsVoltageV) {}
