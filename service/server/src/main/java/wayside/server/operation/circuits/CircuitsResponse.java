package wayside.server.operation.circuits;

import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;
import org.jspecify.annotations.Nullable;
import wayside.server.answer.AssumptionView;
import wayside.server.answer.CautionView;
import wayside.server.answer.DerivationView;
import wayside.server.answer.EngineView;

/** Conductors and fuses. */
@Schema(name = "CircuitsAnswer", description = "The conductor and the fuse of each circuit.")
public record CircuitsResponse(
        @Schema(description = "The circuits, in the order of the request.")
        List<CircuitView> circuits,

        List<AssumptionView> assumptions,
        List<CautionView> cautions,
        EngineView engine,

        @Schema(description = "The way to every figure, or to those that were asked for; left out when none was.")
        @Nullable
        DerivationView derivation) {}
