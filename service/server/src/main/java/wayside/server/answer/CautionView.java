package wayside.server.answer;

import io.swagger.v3.oas.annotations.media.Schema;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Something to know before building. */
@Schema(name = "Caution", description = "What can happen, what to do, whom to ask.")
public record CautionView(
        @Schema(description = "Stable, kebab-case.", example = "inverter-idle") @OpenCodes("caution")
        String code,

        @Schema(
                description =
                        "danger: someone can be hurt or a fire can start. warning: equipment can be damaged or the"
                                + " system can fail. note: worth knowing.")
        @OpenCodes("severity")
        String severity,

        @Schema(description = "The message in English, with figures rounded.")
        String text,

        @Schema(
                description =
                        "What the message is about, by name. The list of codes says which parameters each code has.")
        Map<String, MessageParameterView> parameters,

        @OpenCodes("basis") String basis,
        String title,
        @Nullable String clause,

        @Schema(
                description = "JSON Pointer of the field that the caution is about, when it is about one.",
                example = "/loads/3/powerW")
        @Nullable
        String field) {}
