package wayside.server.operation.recommendation;

import io.swagger.v3.oas.annotations.media.Schema;
import org.jspecify.annotations.Nullable;
import wayside.server.answer.OpenCodes;

/** The bank: rated, usable and usable in the cold said apart. */
@Schema(name = "Battery", description = "The bank: rated, usable and usable in the cold said apart.")
public record BatteryView(
        @OpenCodes("chemistry") String chemistry,

        @Schema(description = "Nominal voltage of the system [V].")
        Double busVoltageV,

        @Schema(description = "Nominal voltage of the cells in series [V].")
        Double bankVoltageV,

        @Schema(description = "Of a new bank at room temperature [Wh].")
        Double usableEnergyWh,

        @Schema(description = "Rated [Wh].") Double nominalEnergyWh,

        @Schema(description = "Rated, at the voltage of the bank [Ah].")
        Double nominalCapacityAh,

        @Schema(description = "Of the rated energy.") Double usableShare,

        @Schema(description = "In the coldest part of the trip [Wh].")
        Double coldUsableEnergyWh,

        @Schema(description = "Carried new, in the cold and without charge [d].")
        Double autonomyDays,

        TypicalRangeView massKg,
        TypicalRangeView volumeL,

        BankNeedView needed,

        @Schema(description = "Absent when the bank was given, or where none is made so large.") @Nullable
        BuyableBankView buyable,

        @Schema(description = "Below this no charge may enter [C].")
        Double lowestChargeC,

        @Schema(description = "Below this it gives nothing [C].")
        Double lowestDischargeC,

        @Schema(description = "Where it stands: as asked, or where a search by chance put it.")
        @OpenCodes("compartment")
        String where,

        @Schema(description = "Whether mornings of the trip are colder than that.")
        Boolean chargeLockedOutInCold,

        @Schema(
                description =
                        "Current of a short at its main fuse [A]: estimated from its cells and joints, or the least that"
                                + " the rules ask of such a bank, whichever is larger.")
        Double prospectiveShortCircuitA,

        @Schema(description = "Free area of each of two openings, for lead-acid [cm2].") @Nullable
        Double ventilationOpeningCm2) {}
