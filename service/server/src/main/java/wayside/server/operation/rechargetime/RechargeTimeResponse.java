package wayside.server.operation.rechargetime;

import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;
import org.jspecify.annotations.Nullable;
import wayside.server.answer.AssumptionView;
import wayside.server.answer.CautionView;
import wayside.server.answer.DerivationView;
import wayside.server.answer.EngineView;
import wayside.server.answer.ShortfallView;

/** How long a recharge takes, or why it never ends. */
@Schema(name = "RechargeTimeAnswer", description = "How long a recharge takes, or why it never ends.")
public record RechargeTimeResponse(
        @Schema(description = "Whether it ends.") Boolean feasible,
        List<ShortfallView> shortfalls,

        @Schema(description = "Hours from start to end [h]; absent when it never ends.") @Nullable
        Double hours,

        @Schema(description = "What energy divided by power would say [h].") @Nullable
        Double plainDivisionHours,

        @Schema(description = "Left for the battery by all sources [W].")
        Double powerW,

        @Schema(description = "The most that the battery takes [W].")
        Double acceptedW,

        List<SourceShareView> sources,

        @Schema(description = "Evenly spaced from start to end.")
        List<ChargePointView> curve,

        List<AssumptionView> assumptions,
        List<CautionView> cautions,
        EngineView engine,

        @Schema(description = "The way to every figure, or to those that were asked for; left out when none was.")
        @Nullable
        DerivationView derivation) {}
