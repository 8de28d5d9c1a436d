package wayside.server.api;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.Valid;
import jakarta.validation.constraints.Max;
import jakarta.validation.constraints.Min;
import jakarta.validation.constraints.Size;
import java.util.List;
import org.jspecify.annotations.Nullable;
import wayside.server.api.rule.UniqueNames;

/** Asks for a whole system. */
@Schema(description = "Asks for a system that carries the loads on the trip.")
public record RecommendationRequest(
        @Schema(description = "What the customer wants to run.") @Size(min = 1, max = Limits.LOADS) @UniqueNames
        List<@Valid LoadInput> loads,

        @Valid TripInput trip,

        @Valid @Nullable SystemWishesInput system,

        @Valid @Nullable TargetInput target,

        @Schema(
                description =
                        "How often the trip is lived when a chance is accepted; 2000 when left open, fewer on a long"
                                + " trip.",
                example = "2000")
        @Min(50)
        @Max(5_000)
        @Nullable
        Integer runs,

        @Schema(description = "Of the random weather; 0 when left open.", example = "0")
        @Min(0)
        @Max(1_000_000_000)
        @Nullable
        Integer seed) {}
