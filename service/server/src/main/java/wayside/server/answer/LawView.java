package wayside.server.answer;

import io.swagger.v3.oas.annotations.media.Schema;
import org.jspecify.annotations.Nullable;

/** One thing that must hold between the parts of a system. */
@Schema(
        name = "Law",
        description =
                "One thing that must hold between the parts of a system: what is asked is at most what is allowed.")
public record LawView(
        @Schema(description = "Stable, kebab-case.", example = "discharge-current") @OpenCodes("law")
        String code,

        @Schema(description = "What must hold, in English.") String text,

        @Schema(description = "Whether it holds; with care means that something must be set or watched for it.")
        @OpenCodes("law-verdict")
        String verdict,

        @Schema(description = "What is asked of the part.") Double asked,
        @Schema(description = "What the part allows.") Double allowed,

        @Schema(description = "Unit of both.") @OpenCodes("unit")
        String unit,

        @Schema(description = "Part of what is allowed that is left, below 0 where the law is broken [share].")
        Double marginShare,

        @Schema(
                description =
                        "What would mend it where it is broken; what must be set or watched where it holds with care.")
        @Nullable
        MessageView mend) {}
