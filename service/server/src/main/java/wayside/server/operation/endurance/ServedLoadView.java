package wayside.server.operation.endurance;

import io.swagger.v3.oas.annotations.media.Schema;
import wayside.server.answer.OpenCodes;

/** What a load gets on such trips. */
@Schema(name = "ServedLoad", description = "What a load gets on such trips, on the mean of all that were tried.")
public record ServedLoadView(
        String name,

        @Schema(description = "How much it matters when the battery runs low.") @OpenCodes("tier")
        String tier,

        @Schema(description = "Share that it gets of the energy that it wants of the battery.")
        Double energyShare,

        @Schema(description = "Nights of the trip on which it gets all that it wants.")
        Double fullNights,

        @Schema(description = "Nights of the trip.") Integer nights) {}
