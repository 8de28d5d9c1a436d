package wayside.server.operation.endurance;

import io.swagger.v3.oas.annotations.media.Schema;
import org.jspecify.annotations.Nullable;

/** The question turned round. */
@Schema(name = "Inverse", description = "What the system would carry, and for how long, at the accepted chance.")
public record InverseView(
        Double acceptedChance,

        @Schema(
                description =
                        "All loads times this would just be carried, through the inverter as it is; 16 at most, and 0"
                                + " when even the smallest load is too much.")
        Double loadFactor,

        @Schema(description = "Nights that such a trip may last; absent when even the first is too many.") @Nullable
        Integer nights,

        @Schema(description = "Whether it may be more nights than were tried.")
        Boolean nightsAreMore,

        @Schema(description = "How many of the runs the nights are counted in, from the first on.")
        Integer nightsRuns) {}
