package wayside.server.answer;

import io.swagger.v3.oas.annotations.media.Schema;
import java.util.Map;

/** Something to tell a person. */
@Schema(
        name = "Message",
        description =
                "Something to tell a person: as a code with parameters, for whoever has words of their own, and in"
                        + " English.")
public record MessageView(
        @Schema(description = "Stable, kebab-case.", example = "runs-flat")
        @OpenCodes({"advice", "power-unit-reason", "change", "shortfall", "caution"})
        String code,

        @Schema(description = "The message in English, with figures rounded.")
        String text,

        @Schema(
                description =
                        "What the message is about, by name. The list of codes says which parameters each code has.")
        Map<String, MessageParameterView> parameters) {}
