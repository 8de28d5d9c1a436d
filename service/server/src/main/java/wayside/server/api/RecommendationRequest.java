package wayside.server.api;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.Valid;
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

        @Valid @Nullable TargetInput target) {}
