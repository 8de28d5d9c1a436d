package wayside.server.operation.circuits;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.Valid;
import jakarta.validation.constraints.Size;
import java.util.List;
import wayside.server.binding.rule.UniqueNames;
import wayside.server.operation.shared.Limits;

/** Asks for conductors and fuses. */
@Schema(description = "Asks for the conductor and the fuse of each circuit.")
public record CircuitsRequest(
        @Schema(description = "Each is sized by itself. Lengths are one way.")
        @Size(min = 1, max = Limits.CIRCUITS)
        @UniqueNames
        List<@Valid CircuitInput> circuits) {}
