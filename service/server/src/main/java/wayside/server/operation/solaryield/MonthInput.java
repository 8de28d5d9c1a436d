package wayside.server.operation.solaryield;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.Valid;
import jakarta.validation.constraints.Max;
import jakarta.validation.constraints.Min;
import org.jspecify.annotations.Nullable;
import wayside.server.operation.shared.AmbientInput;
import wayside.server.operation.shared.SkyInput;

/** A month of a solar yield. */
@Schema(name = "Month", description = "A month of a solar yield.")
public record MonthInput(
        @Schema(description = "Month of the year.", example = "6") @Min(1) @Max(12)
        Integer month,

        @Schema(description = "How sunny; the world table answers when left open.") @Valid @Nullable
        SkyInput sky,

        @Schema(description = "How warm; the world table answers when left open.") @Valid @Nullable
        AmbientInput ambient) {}
