package wayside.server.operation.circuits;

import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The fuse of a circuit. */
@Schema(
        name = "Fuse",
        description = "A fuse that passes three checks: rating, voltage, breaking capacity. Where only an estimate asks"
                + " for more than any kind breaks, the sturdiest, with the caution confirm-fault-current.")
public record FuseView(
        @Schema(description = "The smallest standard rating that carries the design current [A].")
        Double ratingA,

        @Schema(description = "Kind of fuse.", example = "blade 32 V")
        String type,

        @Schema(description = "The standard that describes the kind.")
        String standard,

        @Schema(description = "Rated voltage of the kind [V]; never below the circuit's highest voltage.")
        Double ratedVoltageV,

        @Schema(description = "What the kind can break [A].")
        Double breakingCapacityA,

        @Schema(description = "Current of a short at its own place, which it must break [A].")
        Double minimumInterruptA,

        @Schema(description = "The largest that the rule set would permit on this conductor [A]; reported, not used.")
        Double maximumRatingA,

        @Schema(
                description =
                        "Heat of a short that it lets through while it opens, at most [A2s], up to six times its rating; absent where no"
                                + " operating times are tabulated. Never above what the conductor outlasts.")
        @Nullable
        Double letThroughA2s,

        @Schema(description = "Kinds that must not be used here.")
        List<RefusedFuseView> refused) {}
