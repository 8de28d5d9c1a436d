package wayside.server.answer;

import io.swagger.v3.oas.annotations.media.Schema;
import java.util.Map;

/** Why something does not fit. */
@Schema(name = "Shortfall", description = "Why something does not fit.")
public record ShortfallView(
        @Schema(description = "Stable, kebab-case.") @OpenCodes("shortfall")
        String code,

        @Schema(description = "What is short and what would help, in English, with figures rounded.")
        String text,

        @Schema(
                description =
                        "What the message is about, by name. The list of codes says which parameters each code has.")
        Map<String, MessageParameterView> parameters,

        @Schema(description = "What is asked for.") Double needed,
        @Schema(description = "The best there is.") Double available,

        @Schema(description = "Unit of both.") @OpenCodes("unit")
        String unit) {}
