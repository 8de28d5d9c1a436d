package wayside.server.operation.recommendation;

import io.swagger.v3.oas.annotations.media.Schema;
import org.jspecify.annotations.Nullable;

/** A mains circuit. */
@Schema(name = "AcCircuit", description = "A mains circuit with its breaker, which opens both poles.")
public record AcCircuitView(
        @Schema(description = "As its cable in the graph names it.")
        String name,

        @Schema(description = "What it carries [A].") Double currentA,

        @Schema(description = "Rating of its breaker [A]; absent where none of the table is so large.") @Nullable
        Double breakerA,

        @Schema(description = "Cross-section of each conductor [mm2].") @Nullable
        Double areaMm2) {}
