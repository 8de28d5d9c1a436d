package wayside.server.api;

import io.swagger.v3.oas.annotations.media.Schema;
import org.jspecify.annotations.Nullable;

/** A default that the request left open. */
@Schema(name = "Assumption", description = "A default that the request left open.")
public record AssumptionView(
        @Schema(description = "JSON Pointer of the field that overrides it.")
        String field,

        @Schema(description = "What it is.") String label,
        @Schema(description = "The value used, as text.") String value,

        @Schema(description = "Unit, when it is a number.") @Nullable
        String unit,

        @Schema(description = "Why this value.") String reason,
        String basis,
        String title) {}
