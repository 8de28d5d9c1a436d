package wayside.server.api;

import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Conductors and fuses. */
@Schema(description = "The conductor and the fuse of each circuit.")
public record CircuitsResponse(
        @Schema(description = "In the order of the request.")
        List<CircuitView> circuits,

        @Schema(description = "Left out when return=minimal is preferred.") @Nullable
        List<StepView> derivation,

        List<AssumptionView> assumptions,
        List<CautionView> cautions,

        @Schema(
                description = "For a figure, by its JSON Pointer in this answer, the id of its step; left out with the"
                        + " derivation.")
        @Nullable
        Map<String, String> steps) {}
