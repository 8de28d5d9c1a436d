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

        @Schema(description = "Usable energy of the new bank at room temperature [Wh].")
        Double usableEnergyWh,

        @Schema(description = "Rated energy of the bank [Wh].")
        Double nominalEnergyWh,

        @Schema(description = "Rated capacity, at the voltage of the bank [Ah].")
        Double nominalCapacityAh,

        @Schema(description = "Share of the rated energy that is usable.")
        Double usableShare,

        @Schema(description = "Usable energy in the coldest part of the trip [Wh].")
        Double coldUsableEnergyWh,

        @Schema(description = "Days that the new bank carries the loads in the cold and without charge [d].")
        Double autonomyDays,

        TypicalRangeView massKg,
        TypicalRangeView volumeL,

        BankNeedView needed,

        @Schema(description = "Absent when the bank was given, or where none is made so large.") @Nullable
        BuyableBankView buyable,

        @Schema(description = "Temperature below which no charge may enter [C].")
        Double lowestChargeC,

        @Schema(description = "Temperature below which the bank gives nothing [C].")
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
