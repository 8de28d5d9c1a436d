package wayside.server.operation.recommendation;

import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;
import org.jspecify.annotations.Nullable;
import wayside.server.answer.OpenCodes;

/** A cable between two parts. */
@Schema(name = "GraphCable", description = "A cable between two parts of a system.")
public record CableView(
        @Schema(description = "Name made of its two ends.", example = "bank-to-busbar")
        String id,

        @Schema(description = "Id of the part that feeds a fault in it: its fuse sits there.") @OpenCodes("node")
        String from,

        @Schema(description = "Id of the part at its other end.") @OpenCodes("node")
        String to,

        @Schema(description = "Name of its entry in circuits, or of a mains cable in acSide.circuits.")
        String circuit,

        @Schema(description = "Where it lies.") @OpenCodes("cable-place")
        String place,

        @Schema(description = "What is in it besides its fuse.")
        List<DeviceView> devices,

        @Schema(
                description =
                        "What a short at its other end draws through it [A]; at its fuse it is the fuse's minimumInterruptA.")
        @Nullable
        Double endFaultA) {}
