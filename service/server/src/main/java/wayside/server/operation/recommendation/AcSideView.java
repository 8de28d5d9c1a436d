package wayside.server.operation.recommendation;

import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;
import org.jspecify.annotations.Nullable;
import wayside.server.answer.OpenCodes;

/** The mains side of a vehicle. */
@Schema(
        name = "AcSide",
        description =
                "The mains side of a vehicle, as is usual: the local code and a licensed electrician decide. Neutral is"
                        + " bonded to earth at the inverter while it runs alone, and never in the vehicle on shore power.")
public record AcSideView(
        @Schema(description = "Nominal voltage [V].") Double voltageV,

        @Schema(description = "rcd where IEC rules hold, gfci at 120 V.") @OpenCodes("residual-current-device")
        String residualCurrentDevice,

        @Schema(description = "Residual current at which it opens, at most [A].")
        Double residualCurrentA,

        @Schema(description = "Whether neutral is bonded in the vehicle on shore power: never.")
        Boolean neutralBondedOnShore,

        @Schema(description = "Whether neutral is bonded at the inverter while it runs alone.")
        Boolean neutralBondedAtInverter,

        @Schema(description = "Where the vehicle is plugged in.") @Nullable
        InletView inlet,

        @Schema(description = "Its circuits, from the sources outward.")
        List<AcCircuitView> circuits) {}
