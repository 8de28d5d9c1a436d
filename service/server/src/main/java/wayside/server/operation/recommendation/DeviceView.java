package wayside.server.operation.recommendation;

import io.swagger.v3.oas.annotations.media.Schema;
import wayside.server.answer.OpenCodes;

/** A device in a cable. */
@Schema(
        name = "GraphDevice",
        description =
                "A device in a cable besides its fuse. An isolator opens every live conductor under load and is rated"
                        + " for at least the fuse and the highest voltage of its cable.")
public record DeviceView(
        @Schema(description = "What it is.") @OpenCodes("device")
        String kind,

        @Schema(description = "Id of the part at whose end of the cable it sits.") @OpenCodes("node")
        String at) {}
