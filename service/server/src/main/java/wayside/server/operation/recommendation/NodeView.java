package wayside.server.operation.recommendation;

import io.swagger.v3.oas.annotations.media.Schema;
import org.jspecify.annotations.Nullable;
import wayside.server.answer.OpenCodes;

/** A part of a system. */
@Schema(name = "GraphNode", description = "A part of a system, or several alike.")
public record NodeView(
        @Schema(description = "What it is; no system has two of a kind.", example = "busbar") @OpenCodes("node")
        String id,

        @Schema(description = "How many alike, when several.") @Nullable
        Integer count,

        @Schema(
                description =
                        "What the cables from the battery to it lose one after the other, everything running that can run"
                                + " together [%].")
        @Nullable
        Double voltageDropPercent) {}
