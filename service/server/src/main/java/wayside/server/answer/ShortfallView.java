package wayside.server.answer;

import io.swagger.v3.oas.annotations.media.Schema;
import java.util.Map;

/** Why something does not fit. */
@Schema(name = "Shortfall", description = "Why something does not fit.")
public record ShortfallView(
        @Schema(description = "Stable, kebab-case.") @OpenCodes("shortfall")
        String code,

        @Schema(description = "In English, with figures rounded: what is short, and what would help.")
        String text,

        @Schema(description = "By name. The list of codes says which each has.")
        Map<String, MessageParameterView> parameters,

        @Schema(description = "What is asked for.") Double needed,
        @Schema(description = "The best there is.") Double available,

        @Schema(description = "Unit of both.") @OpenCodes("unit")
        String unit) {}
