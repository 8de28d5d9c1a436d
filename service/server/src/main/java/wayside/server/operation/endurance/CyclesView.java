package wayside.server.operation.endurance;

import io.swagger.v3.oas.annotations.media.Schema;

/** What the bank goes through on a trip. */
@Schema(name = "Cycles", description = "What the battery goes through on the trip.")
public record CyclesView(
        @Schema(description = "Energy out of the cells over the rated energy.")
        Double equivalentFull,

        @Schema(description = "Deepest discharge of any life [share].")
        Double deepestShare,

        @Schema(description = "Deepest discharge of a usual life [share].")
        Double usualDeepestShare) {}
