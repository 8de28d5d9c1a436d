package wayside.server.operation.rechargetime;

import io.swagger.v3.oas.annotations.media.Schema;

/** A moment of a recharge. */
@Schema(name = "ChargePoint", description = "A moment of a recharge.")
public record ChargePointView(
        @Schema(description = "Since its start [h].") Double hour,
        Double stateOfCharge,
        @Schema(description = "Into the battery [W].") Double powerW) {}
