package wayside.server.api;

import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;
import java.util.Map;

/** Conductors and fuses. */
@Schema(description = "The conductor and the fuse of each circuit.")
public record CircuitsResponse(
        @Schema(description = "In the order of the request.")
        List<CircuitView> circuits,

        List<StepView> derivation,
        List<AssumptionView> assumptions,
        List<CautionView> cautions,

        @Schema(description = "For a figure, by its JSON Pointer in this answer, the id of its step.")
        Map<String, String> steps) {}
