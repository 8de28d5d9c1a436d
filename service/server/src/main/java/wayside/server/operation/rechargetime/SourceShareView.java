package wayside.server.operation.rechargetime;

import io.swagger.v3.oas.annotations.media.Schema;
import wayside.server.answer.OpenCodes;

/** What a source brings. */
@Schema(name = "SourceShare", description = "What a source brings.")
public record SourceShareView(
        @Schema(description = "What charges.") @OpenCodes("source")
        String source,

        @Schema(description = "Offered at the battery [W].") Double powerW,
        @Schema(description = "Over the recharge [Wh].") Double energyWh) {}
