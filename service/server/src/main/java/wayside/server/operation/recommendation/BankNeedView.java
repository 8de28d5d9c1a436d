package wayside.server.operation.recommendation;

import io.swagger.v3.oas.annotations.media.Schema;

/** What the question asks of the bank, exactly. */
@Schema(name = "BankNeed", description = "What the question asks of the bank, exactly.")
public record BankNeedView(
        @Schema(description = "Rated energy that is needed [Wh].")
        Double energyWh,

        @Schema(description = "Rated, at the voltage of the bank [Ah].")
        Double capacityAh) {}
