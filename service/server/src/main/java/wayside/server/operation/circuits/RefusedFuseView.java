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

        @Schema(description = "The same in English, with figures rounded.")
        String text,

        @Schema(description = "By name. The list of codes says which each has.")
        Map<String, MessageParameterView> parameters) {}
