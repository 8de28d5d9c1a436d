package wayside.server.operation.recommendation;

import io.swagger.v3.oas.annotations.media.Schema;

/** What the question asks of a self-contained unit, exactly. */
@Schema(name = "UnitNeed", description = "What the question asks of a self-contained unit, exactly.")
public record UnitNeedView(
        @Schema(description = "Rated energy that is needed [Wh].")
        Double energyWh) {}
