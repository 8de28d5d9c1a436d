package wayside.server.operation.recommendation;

import io.swagger.v3.oas.annotations.media.Schema;
import wayside.server.answer.OpenCodes;

/** What a chemistry would take for the same question. */
@Schema(name = "ChemistryOption", description = "What a chemistry would take for the same question.")
public record ChemistryOptionView(
        @OpenCodes("chemistry") String chemistry,
        @Schema(description = "Rated energy [Wh].") Double nominalEnergyWh,
        @Schema(description = "Rated capacity [Ah].") Double nominalCapacityAh,

        @Schema(description = "Usable energy of a new bank at room temperature [Wh].")
        Double usableEnergyWh,

        TypicalRangeView massKg,
        TypicalRangeView volumeL,

        @Schema(description = "Temperature below which no charge may enter [C].")
        Double lowestChargeC) {}
