package wayside.server.operation.rechargetime;

import io.swagger.v3.oas.annotations.media.Schema;

/** A moment of a recharge. */
@Schema(name = "ChargePoint", description = "A moment of a recharge.")
public record ChargePointView(
        @Schema(description = "Hours since the start of the recharge [h].")
        Double hour,

        Double stateOfCharge,
        @Schema(description = "Power into the battery [W].") Double powerW) {}
