package wayside.server.operation.circuits;

import io.swagger.v3.oas.annotations.media.Schema;
import java.util.Map;
import wayside.server.answer.MessageParameterView;
import wayside.server.answer.OpenCodes;

/** A kind of fuse that must not be used. */
@Schema(name = "RefusedFuse", description = "A kind of fuse that must not be used in a circuit.")
public record RefusedFuseView(
        @Schema(description = "Kind of fuse.") String type,

        @Schema(description = "The check that it fails.") @OpenCodes("fuse-refusal")
        String code,

        @Schema(description = "Why, in English, with figures rounded.")
        String text,

        @Schema(
                description =
                        "What the message is about, by name. The list of codes says which parameters each code has.")
        Map<String, MessageParameterView> parameters) {}
