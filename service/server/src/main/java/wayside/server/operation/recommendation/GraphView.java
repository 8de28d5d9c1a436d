package wayside.server.operation.recommendation;

import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;

/** The system as a graph. */
@Schema(
        name = "SystemGraph",
        description =
                "The system as a graph: its parts, and the cables between them, battery first, then outward. What a"
                        + " cable carries, and its fuse, stand in circuits under the name that it gives.")
public record GraphView(
        @Schema(description = "Each kind of part once.") List<NodeView> nodes,

        @Schema(description = "Each pair of parts once.") List<CableView> cables) {}
