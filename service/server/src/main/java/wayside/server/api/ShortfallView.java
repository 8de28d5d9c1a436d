package wayside.server.api;

import io.swagger.v3.oas.annotations.media.Schema;

/** Why something does not fit. */
@Schema(name = "Shortfall", description = "Why something does not fit.")
public record ShortfallView(
        @Schema(description = "Stable, kebab-case.") String code,

        @Schema(description = "What is short, and what would help.")
        String text,

        @Schema(description = "What is asked for.") Double needed,
        @Schema(description = "The best there is.") Double available,
        @Schema(description = "Unit of both.") String unit) {}
