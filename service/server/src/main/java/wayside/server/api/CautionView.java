package wayside.server.api;

import io.swagger.v3.oas.annotations.media.Schema;
import org.jspecify.annotations.Nullable;

/** Something to know before building. */
@Schema(name = "Caution", description = "What can happen, what to do, whom to ask.")
public record CautionView(
        @Schema(description = "Stable, kebab-case.", example = "inverter-idle")
        String code,

        @Schema(description = "danger, warning or note.") String severity,
        String text,
        String basis,
        String title,
        @Nullable String clause,

        @Schema(
                description = "JSON Pointer of the field that the caution is about, when it is about one.",
                example = "/loads/3/powerW")
        @Nullable
        String field) {}
