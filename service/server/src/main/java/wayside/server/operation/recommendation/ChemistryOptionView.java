package wayside.server.operation.recommendation;

import io.swagger.v3.oas.annotations.media.Schema;
import wayside.server.answer.OpenCodes;

/** What a chemistry would take for the same question. */
@Schema(name = "ChemistryOption", description = "What a chemistry would take for the same question.")
public record ChemistryOptionView(
        @OpenCodes("chemistry") String chemistry,
        @Schema(description = "Rated [Wh].") Double nominalEnergyWh,
        @Schema(description = "Rated [Ah].") Double nominalCapacityAh,

        @Schema(description = "Of a new bank at room temperature [Wh].")
        Double usableEnergyWh,

        TypicalRangeView massKg,
        TypicalRangeView volumeL,

        @Schema(description = "Below this no charge may enter [C].")
        Double lowestChargeC) {}
