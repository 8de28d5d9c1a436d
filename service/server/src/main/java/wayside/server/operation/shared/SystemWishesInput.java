package wayside.server.operation.shared;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.Valid;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import org.jspecify.annotations.Nullable;
import wayside.server.binding.rule.OneOfNumbers;
import wayside.server.binding.rule.Rising;
import wayside.server.binding.rule.ZeroOrFrom;

/** What the customer already decided or owns. */
@Schema(
        name = "SystemWishes",
        description = "What the customer already decided or owns. A figure that is given stays"
                + " as given; one that is left open is sized.")
@Rising(
        value = {"maximumDischargeA", "peakDischargeA"},
        orEqual = true)
public record SystemWishesInput(
        @Schema(description = "Nominal voltage of the battery bus [V]; 12 when left open.", example = "12")
        @OneOfNumbers({12, 24, 48})
        @Nullable
        Double busVoltageV,

        @Schema(description = "Chemistry of the bank; lfp when left open.") @Nullable
        ChemistryCode chemistry,

        @Schema(description = "Rated energy of a bank already owned [Wh].")
        @DecimalMin(Limits.LEAST_ENERGY_WH)
        @DecimalMax(Limits.ENERGY_WH)
        @Nullable
        Double nominalEnergyWh,

        @Schema(description = "Rated power of an array already owned, or of all that fits on the roof [W]; 0 for none.")
        @ZeroOrFrom(Limits.LEAST_POWER_W)
        @DecimalMax(Limits.POWER_W)
        @Nullable
        Double solarPowerW,

        @Valid @Nullable PanelInput panel,

        @Schema(
                description =
                        "Rated output of the charger between alternator and bank, at bus voltage [A]; 0 for none.")
        @ZeroOrFrom(Limits.LEAST_CURRENT_A)
        @DecimalMax("2000")
        @Nullable
        Double alternatorChargerA,

        @Schema(description = "Rated output of the shore charger [W]; 0 for none.")
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

        @Valid @Nullable VehicleInput vehicle,

        @Schema(description = "Rule set for conductors and fuses; abyc-e11 when left open.") @Nullable
        RuleSetCode rules,

        @Valid @Nullable CircuitLengthsInput circuitLengthsM,

        @Valid @Nullable RoofInput roof,

        @Valid @Nullable LockerInput locker,

        @Valid @Nullable SizesInput sizes,

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
                        "What a short at the terminals of the whole bank draws, by its maker [A]; estimated when left open. Judged where fuses are chosen.",
                example = "8000")
        @DecimalMin(Limits.LEAST_CURRENT_A)
        @DecimalMax("1000000")
        @Nullable
        Double shortCircuitA,

        @Schema(
                description =
                        "What age leaves of the rated energy of the bank that a chance is reckoned with; by its chemistry, at the end of its life, when left open.",
                example = "0.8")
        @DecimalMin("0.3")
        @DecimalMax("1")
        @Nullable
        Double healthShare,

        @Valid @Nullable MainsInput mains) {}
