package wayside.server.operation.shared;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.Valid;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import org.jspecify.annotations.Nullable;
import wayside.server.binding.rule.OneOfNumbers;
import wayside.server.binding.rule.Rising;
import wayside.server.binding.rule.ZeroOrFrom;

/** A system as it stands, or as it is proposed. */
@Schema(name = "BuiltSystem", description = "A system as it stands, or as it is proposed.")
@Rising(
        value = {"maximumDischargeA", "peakDischargeA"},
        orEqual = true)
public record BuiltSystemInput(
        @Schema(description = "Nominal voltage of the battery bus [V].", example = "12") @OneOfNumbers({12, 24, 48})
        Double busVoltageV,

        @Schema(description = "Chemistry of the bank.") ChemistryCode chemistry,

        @Schema(description = "Rated energy of the bank [Wh].", example = "2560")
        @DecimalMin(Limits.LEAST_ENERGY_WH)
        @DecimalMax(Limits.ENERGY_WH)
        Double nominalEnergyWh,

        @Schema(description = "Rated power of the array [W]; none when left open.", example = "400")
        @ZeroOrFrom(Limits.LEAST_POWER_W)
        @DecimalMax(Limits.POWER_W)
        @Nullable
        Double solarPowerW,

        @Valid @Nullable PanelInput panel,

        @Schema(
                description = "Rated output of the charger between alternator and bank, at bus voltage [A]; none when"
                        + " left open.",
                example = "30")
        @ZeroOrFrom(Limits.LEAST_CURRENT_A)
        @DecimalMax("2000")
        @Nullable
        Double alternatorChargerA,

        @Schema(description = "Rated output of the shore charger [W]; none when left open.", example = "400")
        @ZeroOrFrom(Limits.LEAST_POWER_W)
        @DecimalMax(Limits.POWER_W)
        @Nullable
        Double shoreChargerW,

        @Valid @Nullable InverterInput inverter,

        @Schema(description = "Constant draw of monitors, outlets and electronics [W].")
        @ZeroOrFrom(Limits.LEAST_POWER_W)
        @DecimalMax("10000")
        @Nullable
        Double standbyW,

        @Schema(
                description =
                        "Nominal voltage that the DC loads are made for [V]; 12 when left open. Where it is not the bus's own, a"
                                + " converter stands between.",
                example = "12")
        @OneOfNumbers({12, 24, 48})
        @Nullable
        Double dcLoadsVoltageV,

        @Schema(
                description =
                        "What the bank's maker lets it give for hours, of the whole bank [A]; by its chemistry when left open.",
                example = "100")
        @DecimalMin(Limits.LEAST_CURRENT_A)
        @DecimalMax(Limits.CURRENT_A)
        @Nullable
        Double maximumDischargeA,

        @Schema(description = "Highest current that its maker allows for the seconds of a start [A].", example = "200")
        @DecimalMin(Limits.LEAST_CURRENT_A)
        @DecimalMax(Limits.CURRENT_A)
        @Nullable
        Double peakDischargeA,

        @Schema(
                description =
                        "What the bank's maker lets into it, of the whole bank [A]; by its chemistry when left open.",
                example = "50")
        @DecimalMin(Limits.LEAST_CURRENT_A)
        @DecimalMax(Limits.CURRENT_A)
        @Nullable
        Double maximumChargeA,

        @Schema(
                description =
                        "What a short at the terminals of the whole bank draws, by its maker [A]; estimated when left open. Fuses are chosen by it; where none are, as in an endurance or a recharge, the answer is the same with it.",
                example = "8000")
        @DecimalMin(Limits.LEAST_CURRENT_A)
        @DecimalMax("1000000")
        @Nullable
        Double shortCircuitA,

        @Schema(
                description = "What age has left of the rated energy of the bank; 1, a new one, when left open.",
                example = "0.8")
        @DecimalMin("0.3")
        @DecimalMax("1")
        @Nullable
        Double healthShare,

        @Valid @Nullable MainsInput mains) {}
